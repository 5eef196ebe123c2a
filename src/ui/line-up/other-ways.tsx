'use client'

import { useMemo } from 'react'
import type { LineUpDraft } from '#lineup/draft/line-up-draft'
import type { LineUpEngine } from '#lineup/draft/line-up-solver'
import { ChoicesPart } from '#ui/line-up/choices-part'
import { findTrades, findWaysOut } from '#ui/line-up/find-choices'
import type { AskLineUp, NameOf } from '#ui/line-up/line-up-types'

type OtherWaysProps = {
  readonly draft: LineUpDraft
  readonly isSearching: boolean
  readonly engine: LineUpEngine
  readonly nameOf: NameOf
  readonly onAsk: AskLineUp
}

/** Ways out where nothing fits or a promise is missed; else what could be traded against what. */
export function OtherWays(props: OtherWaysProps) {
  const { draft, isSearching } = props
  if (isSearching || !draft.isSettled) return null
  return draft.made && draft.made.proofs.promise.value === 0 ? <Trades {...props} /> : <WaysOut {...props} />
}

function WaysOut({ draft, engine, nameOf, onAsk }: OtherWaysProps) {
  const find = useMemo(() => findWaysOut({ draft, engine, nameOf }), [draft, engine, nameOf])
  return (
    <ChoicesPart
      title={draft.made ? 'A promise is missed. What would keep more of it' : 'What would work'}
      start={null}
      none={
        draft.made
          ? 'Letting go a rule of this match would not keep more of it: with these players there is not more time to give.'
          : 'No rule alone is in the way: change who comes, from when to when, or how it is played.'
      }
      find={find}
      onTake={(choice) => onAsk(() => choice.request)}
    />
  )
}

function Trades({ draft, engine, nameOf, onAsk }: OtherWaysProps) {
  const find = useMemo(() => findTrades({ draft, engine, nameOf }), [draft, engine, nameOf])
  return (
    <ChoicesPart
      title="What could be traded"
      start="Work out what fewer changes would cost, and what each rule does"
      none="Nothing: fewer changes are not possible, and no rule is set."
      find={find}
      onTake={(choice) => onAsk(() => choice.request)}
    />
  )
}
