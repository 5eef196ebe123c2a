'use client'

import type { ReactNode } from 'react'
import type { Problem } from '#common/problem'
import type { LineUpDraft } from '#lineup/draft/line-up-draft'
import { BesideField } from '#ui/line-up/beside-field'
import { LineUpGrid } from '#ui/line-up/line-up-grid'
import { LineUpProofPart, LineUpSearching } from '#ui/line-up/line-up-proof-part'
import { LineUpSwapPanel } from '#ui/line-up/line-up-swap-panel'
import { type NameOf, problemsAt } from '#ui/line-up/line-up-types'
import type { LineUpEditing } from '#ui/line-up/use-line-up-draft'
import { Problems } from '#ui/page/problems'
import { useChosenPlaces } from '#ui/planning/use-chosen-places'

/** The line-up with its proof, to be changed by taps; or why there is none and what would work. */
export function LineUpResult({
  editing,
  problems,
  otherWays,
  nameOf,
}: {
  readonly editing: LineUpEditing
  /** What stands in the way; empty where nothing is known to. */
  readonly problems: readonly Problem[]
  /** What could be asked instead, each to be taken with a tap. */
  readonly otherWays: ReactNode
  readonly nameOf: NameOf
}) {
  const { draft, search } = editing
  const { made } = draft
  const { chosen, tap, close } = useChosenPlaces(draft.problem.windows, areSameTimes)
  if (!made)
    return (
      <div className="space-y-4">
        {problems.length > 0 ? (
          <Problems
            title="There is no line-up yet"
            problems={problems.map(({ message }) => ({ path: '', message }))}
          />
        ) : null}
        {search ? <LineUpSearching search={search} isProven={false} onStop={editing.stop} /> : null}
        {!search && problems.length === 0 ? (
          <Problems
            title="No line-up was found that keeps all of this"
            problems={[
              { path: '', message: 'Nor is it proven that there is none. Let a rule go, or look once more.' },
            ]}
          />
        ) : null}
        {otherWays}
      </div>
    )
  const at = chosen && { player: chosen.first.row, window: chosen.first.column }
  return (
    <div className="space-y-4">
      <LineUpProofPart
        draft={draft}
        made={made}
        nameOf={nameOf}
        search={search}
        fault={editing.fault}
        onSearch={editing.searchNow}
        onStop={editing.stop}
      />
      <p className="text-sm text-soft">
        K keeps goal, B plays at the back, M in the middle, F up front; empty is off. ▲ comes on, ▽ goes off,
        ■ is held. Tap a place, then another in the same column, to swap them.
      </p>
      <LineUpGrid draft={draft} made={made} nameOf={nameOf} chosen={chosen?.first ?? null} onTap={tap} />
      <BesideField problems={problemsAt(problems, 'held')} />
      {chosen && at ? (
        <LineUpSwapPanel
          draft={draft}
          made={made}
          nameOf={nameOf}
          first={chosen.first}
          second={chosen.second}
          onSwap={(swap) => {
            editing.swap(swap)
            close()
          }}
          onLock={() => editing.lock(at)}
          onUnlock={() => editing.unlock(at)}
          onClose={close}
        />
      ) : null}
      {otherWays}
    </div>
  )
}

type Windows = LineUpDraft['problem']['windows']

function areSameTimes(one: Windows, other: Windows): boolean {
  return one.length === other.length && one.every(({ start }, index) => start === other[index]?.start)
}
