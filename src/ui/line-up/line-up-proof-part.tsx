'use client'

import { useMemo } from 'react'
import type { LineUpDraft } from '#lineup/draft/line-up-draft'
import { explainLineUp } from '#lineup/explain-line-up'
import { type LineUp, lineUpGoals } from '#lineup/line-up'
import type { NameOf } from '#ui/line-up/line-up-types'
import { Button } from '#ui/page/button'
import { Notice } from '#ui/page/notice'
import { RunningSearch, type SearchClock } from '#ui/planning/running-search'

/** How fair the line-up is, in a sentence; and the search for a fairer one. */
export function LineUpProofPart({
  draft,
  made,
  nameOf,
  search,
  fault,
  onSearch,
  onStop,
}: {
  readonly draft: LineUpDraft
  readonly made: LineUp
  readonly nameOf: NameOf
  readonly search: SearchClock | null
  readonly fault: string | null
  readonly onSearch: () => void
  readonly onStop: () => void
}) {
  const sentence = useMemo(() => explainLineUp(draft.problem, made, nameOf), [draft.problem, made, nameOf])
  const isProven = lineUpGoals.every((goal) => made.proofs[goal].proven)
  return (
    <div className="space-y-3">
      <p
        className="border-l-4 border-accent py-1 pl-4 text-lg font-semibold"
        data-part="proof"
        data-settled={search === null && draft.isSettled ? 'yes' : 'no'}
      >
        {sentence}
      </p>
      {fault ? <Notice>{fault}</Notice> : null}
      {search ? (
        <LineUpSearching search={search} isProven={made.proofs.minutes.proven} onStop={onStop} />
      ) : isProven ? null : (
        <p>
          <Button type="button" weight="plain" onClick={onSearch}>
            {searchWords(made.proofs.minutes.proven, draft.request.locks.length > 0)}
          </Button>
        </p>
      )}
    </div>
  )
}

function searchWords(isProven: boolean, hasHeld: boolean): string {
  const what = isProven ? 'Look for better starts, lines and fewer changes' : 'Look for a fairer line-up'
  return hasHeld ? `${what} around what is held` : what
}

export function LineUpSearching({
  search,
  isProven,
  onStop,
}: {
  readonly search: SearchClock
  readonly isProven: boolean
  readonly onStop: () => void
}) {
  const says = isProven
    ? 'Minutes cannot be fairer; looking at goal, starts, lines and changes'
    : 'Looking for a fairer line-up'
  return <RunningSearch search={search} label="Looking for a better line-up" says={says} onStop={onStop} />
}
