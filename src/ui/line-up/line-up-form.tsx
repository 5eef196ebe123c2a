'use client'

import { useMemo } from 'react'
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
import { useLineUpDraft } from '#ui/line-up/use-line-up-draft'
import { LinkButton } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { SectionTitle } from '#ui/page/section-title'
import { useLeavingAsks } from '#ui/page/use-leaving-asks'
import { WholePageLinkButton } from '#ui/page/whole-page-link-button'
import { paths } from '#ui/paths'
import { SavePlan } from '#ui/planning/save-plan'
import { useNameOf } from '#ui/planning/use-name-of'

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
  const nameOf = useNameOf(players)
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
      <SavePlan
        what="line-up"
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
        hint="To print, and for the pitch: save it first."
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
