'use client'

import { useMemo } from 'react'
import { withDesign } from '#planning/new-request'
import type { PlannablePlayer } from '#planning/plannable-player'
import type { PlanRequest, PracticePlan } from '#planning/practice-plan'
import type { ThemeShort } from '#planning/season-gaps'
import type { DesignSheet } from '#practice/design-sheet'
import type { RegisterLine } from '#squad/register'
import type { Theme } from '#themes/theme'
import type { SendForm } from '#ui/entry/send-form'
import { Details } from '#ui/page/details'
import { SectionTitle } from '#ui/page/section-title'
import { AgreedPart } from '#ui/planning/agreed-part'
import { DesignPart } from '#ui/planning/design-part'
import { ExpectedPart } from '#ui/planning/expected-part'
import { FreeGamePart } from '#ui/planning/free-game-part'
import { PairsPart } from '#ui/planning/pairs-part'
import type { NameOf, PlanningPair } from '#ui/planning/planning-types'
import { RulesPart } from '#ui/planning/rules-part'
import { useNewPairs } from '#ui/planning/use-new-pairs'

export type PlanInputsProps = {
  readonly squadId: string
  readonly session: { readonly day: string }
  readonly request: PlanRequest
  /** The plan that was saved; null: none was. */
  readonly plan: PracticePlan | null
  readonly players: readonly PlannablePlayer[]
  readonly themeShort: ThemeShort
  readonly register: readonly RegisterLine[]
  readonly designs: readonly DesignSheet[]
  readonly themes: readonly Theme[]
  readonly pairs: readonly PlanningPair[]
  readonly nameOf: NameOf
  readonly addPair: SendForm
  readonly endPair: SendForm
  readonly onAsk: (change: (request: PlanRequest) => PlanRequest) => void
  /** The same for a change of the free game itself, which is left as it is asked for. */
  readonly onFreeGame: (change: (request: PlanRequest) => PlanRequest) => void
}

/** What a plan is asked for: the practice, who is expected, the rules and the pairs. */
export function PlanInputs(props: PlanInputsProps) {
  const { request, players, pairs, register, onAsk } = props
  const expectedIds = useMemo(() => request.players.map(({ playerId }) => playerId), [request.players])
  useNewPairs(pairs, onAsk)
  return (
    <>
      <Details
        summary={request.design.name ? `Practice: ${request.design.name}` : 'Choose a practice'}
        isOpen={request.design.rounds.length === 0}
      >
        <DesignPart
          request={request}
          designs={props.designs}
          themes={props.themes}
          themeShort={props.themeShort}
          expectedIds={expectedIds}
          onDesign={(design) => onAsk((own) => withDesign(own, design))}
        />
      </Details>
      <section>
        <SectionTitle
          note={
            register.length > 0
              ? 'As the register has it so far; change it as you know better.'
              : 'Everybody of the squad, until the register says otherwise.'
          }
        >
          Expected: {request.players.length}
        </SectionTitle>
        <ExpectedPart request={request} players={players} onAsk={onAsk} />
      </section>
      <section className="space-y-4">
        <SectionTitle>Rules for this practice</SectionTitle>
        <RulesPart request={request} players={players} nameOf={props.nameOf} onAsk={onAsk} />
        <AgreedPart request={request} shown={props.plan} nameOf={props.nameOf} onAsk={onAsk} />
        <FreeGamePart request={request} designs={props.designs} onAsk={props.onFreeGame} />
        <PairsPart
          squadId={props.squadId}
          day={props.session.day}
          request={request}
          pairs={pairs}
          players={players}
          nameOf={props.nameOf}
          addPair={props.addPair}
          endPair={props.endPair}
          onAsk={onAsk}
        />
      </section>
    </>
  )
}
