'use client'

import { useCallback, useEffect, useMemo } from 'react'
import { withAgreedSides } from '#planning/agreed-sides'
import { withAgreements } from '#planning/agreed-today'
import { keepingFreeGame } from '#planning/free-game-for-all'
import { asAgreed, planOfDraft } from '#planning/plan-draft'
import type { PlanSolver } from '#planning/plan-solver'
import { isSamePlan } from '#planning/same-plan'
import type { SendForm } from '#ui/entry/send-form'
import { LinkButton } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { SectionTitle } from '#ui/page/section-title'
import { useLeavingAsks } from '#ui/page/use-leaving-asks'
import { paths } from '#ui/paths'
import { BalancePart } from '#ui/planning/balance-part'
import { agreementsIn, firstDraft, type PlanningStart } from '#ui/planning/first-draft'
import { PlanInputs, type PlanInputsProps } from '#ui/planning/plan-inputs'
import { PlanResult } from '#ui/planning/plan-result'
import type { PlanningPolicy } from '#ui/planning/planning-types'
import { PricesPart } from '#ui/planning/prices-part'
import { SavePlan } from '#ui/planning/save-plan'
import { useNameOf } from '#ui/planning/use-name-of'
import { usePlanDraft } from '#ui/planning/use-plan-draft'

export type PlanFormProps = PlanningStart &
  Omit<PlanInputsProps, 'request' | 'nameOf' | 'onAsk' | 'onFreeGame'> & {
    readonly session: { readonly id: string; readonly day: string; readonly designId: string | null }
    readonly version: number
    readonly policy: PlanningPolicy
    readonly save: SendForm
    readonly solver: PlanSolver
  }

/** A practice planned: design, children, rules, and the plan that follows at once; changed by hand where the coach likes. */
export function PlanForm(props: PlanFormProps) {
  const { squadId, session, version, players, solver } = props
  const editing = usePlanDraft(() => firstDraft(props), solver)
  const { draft, ask } = editing
  const { plan: shown } = props
  const agreementsOf = useMemo(() => agreementsIn(players), [players])
  const askFor = useCallback<typeof ask>(
    (change) => ask((own) => asAgreed(withAgreements(change(own), agreementsOf), shown)),
    [ask, agreementsOf, shown],
  )
  const askForAll = useCallback<typeof ask>(
    (change) =>
      askFor((own) => keepingFreeGame(own, withAgreedSides(withAgreements(change(own), agreementsOf)))),
    [askFor, agreementsOf],
  )
  const { hold } = editing
  useEffect(() => {
    if (shown) hold(shown)
  }, [shown, hold])
  const nameOf = useNameOf(players)
  const plan = useMemo(() => planOfDraft(draft), [draft])
  const isSaved = plan !== null && props.plan !== null && isSamePlan(plan, props.plan)
  useLeavingAsks(editing.canUndo && !isSaved)
  return (
    <div className="space-y-10">
      <PlanInputs {...props} request={draft.request} nameOf={nameOf} onAsk={askForAll} onFreeGame={askFor} />
      <section className="space-y-4">
        <SectionTitle id="the-plan">The plan</SectionTitle>
        <PlanResult editing={editing} onAsk={askFor} policy={props.policy} nameOf={nameOf} />
      </section>
      {draft.made ? (
        <>
          <Details summary="What it does for each child">
            <BalancePart
              made={draft.made}
              request={draft.request}
              players={players}
              policy={props.policy}
              nameOf={nameOf}
            />
          </Details>
          <Details summary="What each rule costs">
            <PricesPart request={draft.request} made={draft.made} nameOf={nameOf} solver={solver} />
          </Details>
        </>
      ) : null}
      <SavePlan
        what="plan"
        json={plan && JSON.stringify({ squadId, sessionId: session.id, knownVersion: version, plan })}
        isSaved={isSaved}
        save={props.save}
        editing={editing}
        links={
          <LinkButton href={paths.planSheet(squadId, { sessionId: session.id })}>Sheet to print</LinkButton>
        }
        hint="The sheet to print is there once the plan is saved."
      />
    </div>
  )
}
