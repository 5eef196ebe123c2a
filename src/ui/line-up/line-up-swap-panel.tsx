'use client'

import { useMemo } from 'react'
import { isHeld, type LineUpDraft } from '#lineup/draft/line-up-draft'
import { sayLineUpSwap } from '#lineup/draft/say-line-up-swap'
import { type LineUpSwap, swapLineUp } from '#lineup/draft/swap-line-up'
import type { LineUp } from '#lineup/line-up'
import { sayClock } from '#lineup/say-clock'
import type { CellPlace } from '#practice/grid'
import type { NameOf } from '#ui/line-up/line-up-types'
import { periodWords } from '#ui/line-up/period-words'
import { Button } from '#ui/page/button'
import { SwapSaid } from '#ui/planning/swap-said'
import { words } from '#ui/words'

type LineUpSwapPanelProps = {
  readonly draft: LineUpDraft
  readonly made: LineUp
  readonly nameOf: NameOf
  /** The place tapped first; `row` is the player's, `column` the window's. */
  readonly first: CellPlace
  readonly second: CellPlace | null
  readonly onSwap: (swap: LineUpSwap) => void
  readonly onLock: () => void
  readonly onUnlock: () => void
  readonly onClose: () => void
}

/** What a tap on the line-up brings up: where somebody is, holding the place, and what a swap would cost. */
export function LineUpSwapPanel(props: LineUpSwapPanelProps) {
  const { draft, made, nameOf, first, second } = props
  const { problem, request } = draft
  const window = problem.windows[first.column]
  const start = problem.windows.find(({ period }) => period === window?.period)?.start ?? 0
  const saidAt = ({ row }: CellPlace) => {
    const line = made.plan[row]?.[first.column] ?? null
    return `${nameOf(problem.players[row]?.id ?? '')}, ${line ? words.line[line] : 'off'}`
  }
  const isLocked = isHeld(draft, { player: first.row, window: first.column })
  return (
    <div
      className="sticky bottom-0 z-10 -mx-4 border-t-2 border-accent bg-leaf px-4 py-3 sm:-mx-8 sm:px-8"
      data-part="swap"
    >
      <p className="font-semibold">
        {periodWords(request.format, window?.period ?? 0)} from {sayClock((window?.start ?? 0) - start)}:{' '}
        {saidAt(first)}
        {second ? ` ⇄ ${saidAt(second)}` : ''}
      </p>
      {second ? (
        <SwapCost {...props} swap={{ one: first.row, other: second.row, window: first.column }} />
      ) : (
        <div className="mt-2 flex flex-wrap items-center gap-2">
          <Button type="button" weight="plain" onClick={isLocked ? props.onUnlock : props.onLock}>
            {isLocked ? 'Let this place go' : 'Hold this place'}
          </Button>
          <Button type="button" weight="plain" onClick={props.onClose}>
            Close
          </Button>
          <p className="text-sm text-soft">
            Tap another player’s place in the same column to see what a swap costs.
          </p>
        </div>
      )}
    </div>
  )
}

function SwapCost({
  draft,
  made,
  swap,
  nameOf,
  onSwap,
  onClose,
}: LineUpSwapPanelProps & { readonly swap: LineUpSwap }) {
  const { problem } = draft
  const { one, other, window } = swap
  const said = useMemo(() => {
    const own = { one, other, window }
    const swapped = swapLineUp(problem, made.plan, own)
    return swapped && sayLineUpSwap(problem, { plan: made.plan, swap: own, swapped, nameOf })
  }, [problem, made, one, other, window, nameOf])
  return <SwapSaid said={said} onSwap={() => onSwap(swap)} onClose={onClose} />
}
