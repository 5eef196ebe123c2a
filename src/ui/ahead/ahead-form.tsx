'use client'

import { Fragment, useCallback, useMemo } from 'react'
import { aheadDraft } from '#ahead/draft/ahead-draft'
import type { AheadEngine } from '#ahead/draft/ahead-engine'
import { plannedPractices } from '#ahead/draft/planned-practices'
import { hasDay } from '#common/dated'
import type { AheadTerm } from '#ui/ahead/ahead-types'
import { ChancesPart } from '#ui/ahead/chances-part'
import { ChangesPart } from '#ui/ahead/changes-part'
import { EndsPart } from '#ui/ahead/ends-part'
import { OthersPart } from '#ui/ahead/others-part'
import { PracticesPart } from '#ui/ahead/practices-part'
import { ProofOfAhead } from '#ui/ahead/proof-of-ahead'
import { ReachPart } from '#ui/ahead/reach-part'
import { SaveAhead } from '#ui/ahead/save-ahead'
import { useAheadDraft } from '#ui/ahead/use-ahead-draft'
import { useByHand } from '#ui/ahead/use-by-hand'
import { WeeksBoard } from '#ui/ahead/weeks-board'
import { WhatIfPart } from '#ui/ahead/what-if-part'
import type { WhatIfSends } from '#ui/ahead/what-if-types'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay, formatDays } from '#ui/format-day'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'

export type AheadFormProps = {
  readonly squadId: string
  readonly term: AheadTerm
  readonly engine: AheadEngine
  readonly save: SendForm
  readonly whatIfs: WhatIfSends
}

/** The weeks ahead on the page: a plan at once, made better beside it, changed by hand, and saved. */
export function AheadForm({ squadId, term, engine, save, whatIfs }: AheadFormProps) {
  const { first, request } = term
  const editing = useAheadDraft(
    () => aheadDraft(request, { firm: first.firm, choices: first.choices, isSettled: first.isAsSaved }),
    engine.solve,
  )
  const { draft } = editing
  const nameOf = useCallback((player: number) => term.players[player]?.name ?? 'Somebody', [term.players])
  const practices = useMemo(
    () => (draft.best ? plannedPractices(draft.asked, draft.best.plan.choices) : null),
    [draft],
  )
  const fixed = useMemo(
    () => new Set(term.sessions.filter(({ isFixed }) => isFixed).map(({ id }) => id)),
    [term.sessions],
  )
  const byHand = useByHand(editing, fixed)
  return (
    <div className="space-y-10">
      <ChangesPart term={term} nameOf={nameOf} />
      <section className="space-y-4">
        <SectionTitle note="The next four are firm, the rest is a sketch that is planned anew after each practice. Drag a theme to another practice, or tap another theme: it is held there, and the rest is planned around it.">
          The weeks
        </SectionTitle>
        <ClosedLine squadId={squadId} term={term} />
        <WeeksBoard
          term={term}
          problem={draft.asked}
          choices={draft.best?.plan.choices ?? []}
          byHand={byHand}
        />
        <p role="status" className="min-h-6 text-soft">
          {byHand.said}
        </p>
        <ProofOfAhead editing={editing} />
      </section>
      <section>
        <SectionTitle note="What each practice is about, and why.">Practice by practice</SectionTitle>
        <PracticesPart squadId={squadId} term={term} draft={draft} byHand={byHand} nameOf={nameOf} />
      </section>
      {draft.best ? (
        <>
          <section>
            <SectionTitle note="Left of the middle is less than an even share, right of it is more; the band is the tolerance: what still counts as about even.">
              Where everyone ends
            </SectionTitle>
            <EndsPart problem={draft.asked} plan={draft.best.plan} nameOf={nameOf} />
            <div className="mt-4">
              <ReachPart problem={draft.problem} plan={draft.best.plan} engine={engine} nameOf={nameOf} />
            </div>
          </section>
          <section>
            <SectionTitle note="How likely everyone is to end inside the band, who comes being a matter of chance; and which practice matters most.">
              Will it work?
            </SectionTitle>
            <ChancesPart
              problem={draft.asked}
              plan={draft.best.plan}
              isResting={editing.search === null}
              nameOf={nameOf}
            />
          </section>
          <section>
            <SectionTitle note="Nearly as good, but with another theme in one practice; the rest is planned around it.">
              Other plans
            </SectionTitle>
            <OthersPart term={term} editing={editing} best={draft.best} engine={engine} />
          </section>
          <section>
            <SectionTitle note="Nothing is changed by looking. The plan is made anew for it, and everyone’s end is shown beside what it would be.">
              What if
            </SectionTitle>
            <WhatIfPart
              squadId={squadId}
              term={term}
              draft={draft}
              solver={engine.solve}
              nameOf={nameOf}
              sends={whatIfs}
            />
          </section>
        </>
      ) : null}
      <SaveAhead squadId={squadId} term={term} practices={practices} editing={editing} save={save} />
    </div>
  )
}

function ClosedLine({
  squadId,
  term: { closed, asOf, firstDay, lastDay, request },
}: Pick<AheadFormProps, 'squadId' | 'term'>) {
  const inTerm = closed.filter((own) => own.lastDay >= (asOf ?? firstDay) && own.firstDay <= lastDay)
  const standing = request.practices.filter(({ day }) => inTerm.some((span) => hasDay(span, day)))
  return inTerm.length === 0 ? null : (
    <p className="text-sm text-soft">
      Without practice: {inTerm.map((own) => `${own.name}, ${formatDays(own)}`).join('; ')}.
      {standing.map(({ id, day }) => (
        <Fragment key={id}>
          {' '}
          The practice of{' '}
          <PageLink href={paths.session(squadId, { sessionId: id })}>{formatDay(day)}</PageLink> still stands
          in the list; it is not planned here.
        </Fragment>
      ))}
    </p>
  )
}
