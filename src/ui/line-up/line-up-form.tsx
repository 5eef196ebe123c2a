'use client'

import { type ReactNode, useActionState, useCallback, useMemo } from 'react'
import { firstLineUpDraft } from '#lineup/draft/first-line-up-draft'
import { planOfDraft } from '#lineup/draft/line-up-draft'
import type { LineUpEngine } from '#lineup/draft/line-up-solver'
import { plainFormatFor } from '#lineup/draft/plain-format'
import { isSameMatchPlan } from '#lineup/draft/same-match-plan'
import { sayLineUpClash } from '#lineup/say-line-up-clash'
import type { Period } from '#match/match'
import type { SendForm } from '#ui/entry/send-form'
import { ChangesPart } from '#ui/line-up/changes-part'
import { EachPlayerPart } from '#ui/line-up/each-player-part'
import { LineUpInputs, type LineUpInputsProps } from '#ui/line-up/line-up-inputs'
import { LineUpResult } from '#ui/line-up/line-up-result'
import { OtherWays } from '#ui/line-up/other-ways'
import { type LineUpEditing, useLineUpDraft } from '#ui/line-up/use-line-up-draft'
import { Button, LinkButton } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { Notice } from '#ui/page/notice'
import { Problems } from '#ui/page/problems'
import { SectionTitle } from '#ui/page/section-title'
import { useLeavingAsks } from '#ui/page/use-leaving-asks'
import { WholePageLinkButton } from '#ui/page/whole-page-link-button'
import { paths } from '#ui/paths'

export type LineUpFormProps = Omit<LineUpInputsProps, 'request' | 'nameOf' | 'problems' | 'onAsk'> & {
  readonly session: { readonly id: string; readonly day: string; readonly periods: readonly Period[] | null }
  readonly version: number
  readonly save: SendForm
  readonly engine: LineUpEngine
}

/** A match planned: who comes, format, rules, and the line-up that follows at once; changed by hand where the coach likes. */
export function LineUpForm(props: LineUpFormProps) {
  const { squadId, session, version, players, pairs, engine } = props
  const editing = useLineUpDraft(() => firstLineUpDraft(startOf(props)), engine.solve)
  const { draft, ask } = editing
  const names = useMemo(() => new Map(players.map(({ id, name }) => [id, name])), [players])
  const nameOf = useCallback((id: string) => names.get(id) ?? 'Somebody', [names])
  const problems = useMemo(
    () => draft.clash.map((clash) => sayLineUpClash(draft.problem, clash, nameOf)),
    [draft.clash, draft.problem, nameOf],
  )
  const plan = useMemo(() => planOfDraft(draft, nameOf), [draft, nameOf])
  const isSaved = plan !== null && props.plan !== null && isSameMatchPlan(plan, props.plan)
  useLeavingAsks(editing.canUndo && !isSaved)
  const at = { sessionId: session.id }
  return (
    <div className="space-y-10">
      <LineUpInputs
        {...props}
        pairs={pairs}
        request={draft.request}
        nameOf={nameOf}
        problems={problems}
        onAsk={ask}
      />
      <section className="space-y-4">
        <SectionTitle id="the-line-up">The line-up</SectionTitle>
        <LineUpResult
          editing={editing}
          problems={problems}
          otherWays={
            <OtherWays
              draft={draft}
              isSearching={editing.search !== null}
              engine={engine}
              nameOf={nameOf}
              onAsk={ask}
            />
          }
          nameOf={nameOf}
        />
      </section>
      {draft.made ? (
        <>
          <Details summary="Change by change" isOpen>
            <ChangesPart draft={draft} made={draft.made} nameOf={nameOf} />
          </Details>
          <Details summary="What it does for each player">
            <EachPlayerPart draft={draft} made={draft.made} policy={props.policy} nameOf={nameOf} />
          </Details>
        </>
      ) : null}
      <SaveLineUp
        json={plan && JSON.stringify({ squadId, sessionId: session.id, knownVersion: version, plan })}
        isSaved={isSaved}
        save={props.save}
        editing={editing}
        links={
          <>
            <LinkButton href={paths.lineUpSheet(squadId, at)}>Print on A4</LinkButton>
            <LinkButton href={paths.lineUpCard(squadId, at)}>Print a card</LinkButton>
            <WholePageLinkButton href={paths.pitch(session.id)} weight="plain">
              To the pitch
            </WholePageLinkButton>
          </>
        }
      />
    </div>
  )
}

function startOf({ session, plan, players, register, pairs, policy, squadFormat }: LineUpFormProps) {
  const pairsOf = (kind: (typeof pairs)[number]['kind']) =>
    pairs.filter((pair) => pair.kind === kind).map(({ playerIds }) => playerIds)
  return {
    plan,
    players,
    register,
    format: squadFormat ?? plainFormatFor(session.periods),
    policyShare: policy.leastMatchShare,
    apart: pairsOf('apart'),
    together: pairsOf('together'),
  }
}

function SaveLineUp({
  json,
  isSaved,
  save,
  editing,
  links,
}: {
  /** What is sent; null: there is no line-up to save. */
  readonly json: string | null
  readonly isSaved: boolean
  readonly save: SendForm
  readonly editing: Pick<LineUpEditing, 'settle' | 'canUndo' | 'undo'>
  readonly links: ReactNode
}) {
  const [reply, sendForm, isSaving] = useActionState(save, { status: 'idle' } as const)
  return (
    <form
      action={sendForm}
      onSubmit={editing.settle}
      className="space-y-3 border-t-2 border-rule-strong pt-4"
    >
      <div aria-live="polite">
        {reply.status === 'refused' && !isSaved ? (
          <Problems title="Nothing was saved; the line-up is still here" problems={reply.problems} />
        ) : null}
        {reply.status === 'done' && isSaved ? <Notice tone="done">{reply.message}</Notice> : null}
      </div>
      {json ? <input type="hidden" name="json" value={json} /> : null}
      <div className="flex flex-wrap items-center gap-3">
        <Button disabled={!json || isSaving || isSaved}>
          {isSaving ? 'Saving …' : isSaved ? 'Saved' : 'Save this line-up'}
        </Button>
        <Button type="button" weight="plain" disabled={!editing.canUndo} onClick={editing.undo}>
          Undo
        </Button>
        {isSaved ? (
          links
        ) : (
          <span className="text-sm text-soft">To print, and for the pitch: save it first.</span>
        )}
      </div>
    </form>
  )
}
