'use client'

import { useActionState, useCallback, useEffect, useMemo, useState } from 'react'
import { planOfDraft } from '#planning/plan-draft'
import type { PlanSolver } from '#planning/plan-solver'
import { isSamePlan } from '#planning/same-plan'
import type { CellPlace } from '#practice/grid'
import type { SendForm } from '#ui/entry/send-form'
import { Button, LinkButton } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { Notice } from '#ui/page/notice'
import { Problems } from '#ui/page/problems'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { BalancePart } from '#ui/planning/balance-part'
import { firstDraft, type PlanningStart } from '#ui/planning/first-draft'
import { PlanGridPart } from '#ui/planning/plan-grid-part'
import { PlanInputs, type PlanInputsProps } from '#ui/planning/plan-inputs'
import type { PlanningPolicy } from '#ui/planning/planning-types'
import { PricesPart } from '#ui/planning/prices-part'
import { ProofPart } from '#ui/planning/proof-part'
import { SwapPanel } from '#ui/planning/swap-panel'
import { usePlanDraft } from '#ui/planning/use-plan-draft'
import { WaysOutPart } from '#ui/planning/ways-out-part'

export type PlanFormProps = PlanningStart &
  Omit<PlanInputsProps, 'request' | 'nameOf' | 'onAsk'> & {
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
  const { request, made } = draft
  const [first, setFirst] = useState<CellPlace | null>(null)
  const [second, setSecond] = useState<CellPlace | null>(null)
  const names = useMemo(() => new Map(players.map(({ id, name }) => [id, name])), [players])
  const nameOf = useCallback((id: string) => names.get(id) ?? 'Somebody', [names])
  const [reply, sendForm, isSaving] = useActionState(props.save, { status: 'idle' } as const)
  const plan = useMemo(() => planOfDraft(draft), [draft])
  const json = plan && JSON.stringify({ squadId, sessionId: session.id, knownVersion: version, plan })
  const isSaved = plan !== null && props.plan !== null && isSamePlan(plan, props.plan)
  useLeavingAsks(editing.canUndo && !isSaved)
  const close = () => {
    setFirst(null)
    setSecond(null)
  }
  const tap = (place: CellPlace) => {
    if (first && first.column === place.column && first.row !== place.row) setSecond(place)
    else if (first?.column === place.column && first.row === place.row) close()
    else {
      setFirst(place)
      setSecond(null)
    }
  }
  const isLocked =
    first !== null &&
    request.locks.some(
      ({ turn, playerId }) => turn === first.column + 1 && playerId === request.players[first.row]?.playerId,
    )
  return (
    <div className="space-y-10">
      <PlanInputs
        {...props}
        request={request}
        nameOf={nameOf}
        onAsk={(change) => {
          close()
          ask(change)
        }}
      />
      <section className="space-y-4">
        <SectionTitle id="the-plan">The plan</SectionTitle>
        {made ? (
          <>
            <ProofPart
              request={request}
              made={made}
              nameOf={nameOf}
              search={editing.search}
              fault={editing.fault}
              onSearch={editing.searchNow}
              onStop={editing.stop}
            />
            <p className="text-sm text-soft">
              A attacks, D defends, K is in goal, the number is the area, W waits. ▲ comes on, ▽ goes off, ■
              is held fast. Tap a place, then another in the same turn, to swap them.
            </p>
            <PlanGridPart request={request} plan={made.plan} nameOf={nameOf} chosen={first} onTap={tap} />
            {first ? (
              <SwapPanel
                draft={draft}
                nameOf={nameOf}
                first={first}
                second={second}
                isLocked={isLocked}
                onSwap={(swap) => {
                  editing.swap(swap)
                  close()
                }}
                onLock={() => editing.lock({ turn: first.column, player: first.row })}
                onUnlock={() => editing.unlock({ turn: first.column, player: first.row })}
                onClose={close}
              />
            ) : null}
          </>
        ) : (
          <WaysOutPart
            request={request}
            clash={draft.clash}
            nameOf={nameOf}
            onTake={(way) => ask(() => way)}
          />
        )}
      </section>
      {made ? (
        <>
          <Details summary="What it does for each child">
            <BalancePart
              made={made}
              request={request}
              players={players}
              policy={props.policy}
              nameOf={nameOf}
            />
          </Details>
          <Details summary="What each rule costs">
            <PricesPart request={request} made={made} nameOf={nameOf} solver={solver} />
          </Details>
        </>
      ) : null}
      <div aria-live="polite">
        {reply.status === 'refused' ? (
          <Problems title="Nothing was saved; the plan is still here" problems={reply.problems} />
        ) : null}
        {reply.status === 'done' && isSaved ? <Notice tone="done">{reply.message}</Notice> : null}
      </div>
      <form
        action={sendForm}
        className="flex flex-wrap items-center gap-3 border-t-2 border-rule-strong pt-4"
      >
        {json ? <input type="hidden" name="json" value={json} /> : null}
        <Button disabled={!json || isSaving || isSaved}>
          {isSaving ? 'Saving …' : isSaved ? 'Saved' : 'Save this plan'}
        </Button>
        <Button type="button" weight="plain" disabled={!editing.canUndo} onClick={editing.undo}>
          Undo
        </Button>
        {isSaved ? (
          <LinkButton href={paths.planSheet(squadId, { sessionId: session.id })}>Sheet to print</LinkButton>
        ) : (
          <span className="text-sm text-soft">The sheet to print is there once the plan is saved.</span>
        )}
      </form>
    </div>
  )
}

/** What is not saved yet is not lost by a slip: the browser asks first. */
function useLeavingAsks(isUnsaved: boolean): void {
  useEffect(() => {
    if (!isUnsaved) return
    const ask = (event: BeforeUnloadEvent) => event.preventDefault()
    window.addEventListener('beforeunload', ask)
    return () => window.removeEventListener('beforeunload', ask)
  }, [isUnsaved])
}
