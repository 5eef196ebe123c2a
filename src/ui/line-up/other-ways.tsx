'use client'

import { useMemo } from 'react'
import type { LineUpDraft } from '#lineup/draft/line-up-draft'
import type { LineUpSolver } from '#lineup/draft/line-up-solver'
import { sayAgainst, sayWhatItGives } from '#lineup/draft/say-what-it-gives'
import { tradesOfMatch } from '#lineup/draft/trades-of-match'
import { waysOutOfMatch } from '#lineup/draft/ways-out-of-match'
import { changesInside } from '#lineup/line-up-values'
import { ChoicesPart } from '#ui/line-up/choices-part'
import type { AskLineUp, NameOf } from '#ui/line-up/line-up-types'

type OtherWaysProps = {
  readonly draft: LineUpDraft
  readonly isSearching: boolean
  readonly solver: LineUpSolver
  readonly nameOf: NameOf
  readonly onAsk: AskLineUp
}

/** Ways out where nothing fits or a promise is missed; else what could be traded against what. */
export function OtherWays(props: OtherWaysProps) {
  const { draft, isSearching } = props
  if (isSearching || !draft.isSettled) return null
  return draft.made && draft.made.proofs.promise.value === 0 ? <Trades {...props} /> : <WaysOut {...props} />
}

function WaysOut({ draft, solver, nameOf, onAsk }: OtherWaysProps) {
  const { request, clash, made } = draft
  const choices = useMemo(() => waysOutOfMatch(request, { clash, nameOf }), [request, clash, nameOf])
  const missed = made?.proofs.promise.value ?? null
  return (
    <ChoicesPart
      choices={choices}
      solver={solver}
      title={made ? 'A promise is missed. What would keep more of it' : 'What would work'}
      start={null}
      isWanted={({ lineUp }) => missed === null || lineUp.proofs.promise.value < missed - 1}
      say={sayWhatItGives}
      onTake={(choice) => onAsk(() => choice.request)}
    />
  )
}

function Trades({ draft, solver, nameOf, onAsk }: OtherWaysProps) {
  const { request, problem, made } = draft
  const changes = made ? changesInside(problem, made.plan) : 0
  const choices = useMemo(() => tradesOfMatch(request, { changes, nameOf }), [request, changes, nameOf])
  if (!made) return null
  return (
    <ChoicesPart
      choices={choices}
      solver={solver}
      title="What could be traded"
      start="Work out what fewer changes would cost, and what each rule does"
      isWanted={() => true}
      say={(found) => sayAgainst(found, { problem, lineUp: made })}
      onTake={(choice) => onAsk(() => choice.request)}
    />
  )
}
