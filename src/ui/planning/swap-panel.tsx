'use client'

import { useMemo } from 'react'
import type { PlanDraft } from '#planning/plan-draft'
import { isThereFor } from '#planning/problem-of-request'
import { saySwap } from '#planning/say-swap'
import { type Swap, swapPlaces } from '#planning/swap'
import { turnFrames } from '#planning/turn-frames'
import type { CellPlace } from '#practice/grid'
import { away, roleOf, stationOf } from '#rotation/place'
import { Button } from '#ui/page/button'
import type { NameOf } from '#ui/planning/planning-types'
import { SwapSaid } from '#ui/planning/swap-said'
import { words } from '#ui/words'

type SwapPanelProps = {
  readonly draft: PlanDraft
  readonly nameOf: NameOf
  /** The place tapped first; `row` is the player's, `column` the turn's. */
  readonly first: CellPlace
  readonly second: CellPlace | null
  readonly isLocked: boolean
  /** Held by an agreement: it is let go there, not here. */
  readonly isAgreed: boolean
  readonly onSwap: (swap: Swap) => void
  readonly onLock: () => void
  readonly onUnlock: () => void
  readonly onClose: () => void
}

/** What a tap on the plan brings up: where somebody is, holding the place fast, and what a swap would cost. */
export function SwapPanel(props: SwapPanelProps) {
  const { draft, nameOf, first, second } = props
  const nameAt = (row: number) => nameOf(draft.request.players[row]?.playerId ?? '')
  const swap = second && { one: first.row, other: second.row, turn: first.column }
  return (
    <div
      className="sticky bottom-0 z-10 -mx-4 border-t-2 border-accent bg-leaf px-4 py-3 sm:-mx-8 sm:px-8"
      data-part="swap"
    >
      <p className="font-semibold">
        Turn {first.column + 1}: {nameAt(first.row)}, {placeWords(draft, first)}
        {second ? (
          <>
            {' ⇄ '}
            {nameAt(second.row)}, {placeWords(draft, second)}
          </>
        ) : null}
      </p>
      {swap ? (
        <SwapCost {...props} swap={swap} nameAt={nameAt} />
      ) : (
        <div className="mt-2 flex flex-wrap items-center gap-2">
          {props.isAgreed ? (
            <p>Held as agreed. Let it go under “Agreed with single children”.</p>
          ) : (
            <Button type="button" weight="plain" onClick={props.isLocked ? props.onUnlock : props.onLock}>
              {props.isLocked ? 'Let this place go' : 'Hold this place fast'}
            </Button>
          )}
          <Button type="button" weight="plain" onClick={props.onClose}>
            Close
          </Button>
          <p className="text-sm text-soft">Tap another name’s place in this turn to see what a swap costs.</p>
        </div>
      )}
    </div>
  )
}

function SwapCost({
  draft,
  swap,
  nameAt,
  onSwap,
  onClose,
}: SwapPanelProps & { readonly swap: Swap; readonly nameAt: (row: number) => string }) {
  const said = useMemo(() => {
    const { made, request } = draft
    const swapped = made && swapPlaces(made.problem, { plan: made.plan, request, swap })
    return swapped && saySwap(swapped, nameAt)
  }, [draft, swap, nameAt])
  return <SwapSaid said={said} onSwap={() => onSwap(swap)} onClose={onClose} />
}

function placeWords(draft: PlanDraft, { row, column }: CellPlace): string {
  const place = draft.made?.plan[column]?.[row] ?? away
  const player = draft.request.players[row]
  if (!player || !isThereFor(player, column + 1)) return 'not there'
  const role = roleOf(place)
  const areas = turnFrames(draft.request.design.rounds)[column]?.stations.length ?? 1
  const area = role !== 'rest' && areas > 1 ? ` in ${words.area.one} ${stationOf(place) + 1}` : ''
  return `${words.doing[role]}${area}`
}
