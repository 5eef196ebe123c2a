'use client'

import { useMemo } from 'react'
import { explainPractice } from '#ahead/explain/explain-practice'
import type { AheadTerm, NameOfPlace } from '#ui/ahead/ahead-types'
import { PracticeCard } from '#ui/ahead/practice-card'
import type { AheadEditing } from '#ui/ahead/use-ahead-draft'

type PracticesPartProps = {
  readonly squadId: string
  readonly term: AheadTerm
  readonly editing: AheadEditing
  readonly nameOf: NameOfPlace
}

/** Every practice to come: what it is about, and why. */
export function PracticesPart({ squadId, term, editing, nameOf }: PracticesPartProps) {
  const { asked, best } = editing.draft
  const said = useMemo(
    () =>
      best
        ? asked.practices.map((_, practice) => explainPractice(asked, best.plan, { practice, nameOf }))
        : [],
    [asked, best, nameOf],
  )
  const sessions = new Map(term.sessions.map((session) => [session.id, session]))
  return (
    <ol className="border-t border-rule">
      {asked.practices.map(({ id }, practice) => {
        const session = sessions.get(id)
        return session ? (
          <PracticeCard
            key={id}
            squadId={squadId}
            session={session}
            practice={practice}
            sentence={said[practice] ?? ''}
            editing={editing}
          />
        ) : null
      })}
    </ol>
  )
}
