'use client'

import { useMemo } from 'react'
import { sayChange } from '#ahead/explain/say-change'
import { whatChanged } from '#ahead/explain/what-changed'
import { leansFor } from '#ahead/lean-to'
import { problemOfAhead } from '#ahead/problem-of-request'
import type { AheadTerm, NameOfPlace } from '#ui/ahead/ahead-types'
import { formatDay } from '#ui/format-day'
import { SectionTitle } from '#ui/page/section-title'

type ChangesPartProps = { readonly term: AheadTerm; readonly nameOf: NameOfPlace }

/** What is otherwise than in the saved plan since a practice was written, and why. Nothing where nothing is. */
export function ChangesPart({ term, nameOf }: ChangesPartProps) {
  const { stored, asOf, first, request, since } = term
  const said = useMemo(() => {
    if (!stored || !first.choices || first.isAsSaved) return []
    const problem = problemOfAhead(request)
    const plan = { choices: first.choices, leans: leansFor(problem, first.choices) }
    const sessions = new Map(term.sessions.map((session) => [session.id, session.day]))
    const themes = new Map(request.themes.map(({ id, name }) => [id, name]))
    const designs = new Map(request.designs.map(({ id, name }) => [id, name]))
    const record = since.filter(({ day }) => stored.asOf === null || day > stored.asOf)
    return whatChanged(stored, { problem, plan }, record).map((change) =>
      sayChange(change, {
        ...{ problem, plan, nameOf, sayDay: formatDay },
        themeName: (id) => themes.get(id) ?? 'a theme that is gone',
        designName: (id) => designs.get(id) ?? 'a design that was put away',
        dayOf: (id) => sessions.get(id) ?? null,
      }),
    )
  }, [term, stored, first, request, since, nameOf])
  if (said.length === 0) return null
  return (
    <section>
      <SectionTitle
        note={
          stored && stored.asOf !== asOf
            ? 'A practice was written since the plan was saved, so it was planned anew. It is kept once you save it.'
            : 'What the plan rests on has changed since it was saved. It is kept once you save it.'
        }
      >
        What changed, and why
      </SectionTitle>
      <ul className="list-disc space-y-1 pl-5" data-part="changes">
        {said.map((sentence) => (
          <li key={sentence} className="max-w-prose">
            {sentence}
          </li>
        ))}
      </ul>
    </section>
  )
}
