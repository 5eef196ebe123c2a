'use client'

import { useMemo } from 'react'
import type { MadePlan } from '#planning/plan-draft'
import { proofOfPlan } from '#planning/plan-proof'
import type { PlanRequest } from '#planning/practice-plan'
import { Button } from '#ui/page/button'
import { Notice } from '#ui/page/notice'
import { PlanFacts } from '#ui/planning/plan-facts'
import type { NameOf, PlanningPolicy } from '#ui/planning/planning-types'
import { RunningSearch, type SearchClock } from '#ui/planning/running-search'

type ProofPartProps = {
  readonly request: PlanRequest
  readonly made: MadePlan
  readonly policy: PlanningPolicy
  readonly nameOf: NameOf
  readonly search: SearchClock | null
  readonly fault: string | null
  readonly onSearch: () => void
  readonly onStop: () => void
}

/** How fair the plan is, how long anyone waits, how much changes; and the search for a fairer one. */
export function ProofPart({
  request,
  made,
  policy,
  nameOf,
  search,
  fault,
  onSearch,
  onStop,
}: ProofPartProps) {
  const proof = useMemo(() => proofOfPlan(made.problem, made), [made])
  return (
    <div className="space-y-3">
      <p
        className="border-l-4 border-accent py-1 pl-4 text-lg font-semibold"
        data-part="proof"
        data-settled={search === null && made.isSettled ? 'yes' : 'no'}
      >
        {proof.sentence}
      </p>
      <PlanFacts request={request} made={made} policy={policy} nameOf={nameOf} />
      {fault ? <Notice>{fault}</Notice> : null}
      <SearchBar
        search={search}
        isProven={proof.proven}
        isHeld={request.locks.length > 0}
        onSearch={onSearch}
        onStop={onStop}
      />
    </div>
  )
}

function SearchBar({
  search,
  isProven,
  isHeld,
  onSearch,
  onStop,
}: Pick<ProofPartProps, 'search' | 'onSearch' | 'onStop'> & {
  readonly isProven: boolean
  readonly isHeld: boolean
}) {
  if (search)
    return (
      <RunningSearch
        search={search}
        label="Looking for a better plan"
        says={
          isProven
            ? 'Nothing fairer is possible; looking for fewer changes and better mixing'
            : 'Looking for a fairer plan'
        }
        onStop={onStop}
      />
    )
  return isProven ? null : (
    <p>
      <Button type="button" weight="plain" onClick={onSearch}>
        {isHeld ? 'Look for a fairer plan around what is held fast' : 'Look for a fairer plan'}
      </Button>
    </p>
  )
}
