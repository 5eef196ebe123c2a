'use client'

import { useCallback, useMemo } from 'react'
import { aheadDraft } from '#ahead/draft/ahead-draft'
import type { AheadSolver } from '#ahead/draft/ahead-solver'
import { plannedPractices } from '#ahead/draft/planned-practices'
import type { AheadTerm } from '#ui/ahead/ahead-types'
import { PracticesPart } from '#ui/ahead/practices-part'
import { SaveAhead } from '#ui/ahead/save-ahead'
import { useAheadDraft } from '#ui/ahead/use-ahead-draft'
import type { SendForm } from '#ui/entry/send-form'
import { SectionTitle } from '#ui/page/section-title'

export type AheadFormProps = {
  readonly squadId: string
  readonly term: AheadTerm
  readonly solver: AheadSolver | null
  readonly save: SendForm
}

/** The weeks ahead on the page: a plan at once, made better beside it, changed by hand, and saved. */
export function AheadForm({ squadId, term, solver, save }: AheadFormProps) {
  const { first, request } = term
  const editing = useAheadDraft(
    () => aheadDraft(request, { firm: first.firm, choices: first.choices, isSettled: first.isAsSaved }),
    solver,
  )
  const { draft } = editing
  const nameOf = useCallback((player: number) => term.players[player]?.name ?? 'Somebody', [term.players])
  const practices = useMemo(
    () => (draft.best ? plannedPractices(draft.asked, draft.best.plan.choices) : null),
    [draft],
  )
  return (
    <div className="space-y-10">
      <section>
        <SectionTitle note="The next four are firm. The rest is a sketch, and is planned anew after each practice.">
          Practice by practice
        </SectionTitle>
        <PracticesPart squadId={squadId} term={term} editing={editing} nameOf={nameOf} />
      </section>
      <SaveAhead squadId={squadId} term={term} practices={practices} editing={editing} save={save} />
    </div>
  )
}
