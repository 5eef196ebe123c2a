'use client'

import { useMemo } from 'react'
import type { AheadDraft } from '#ahead/draft/ahead-draft'
import { explainPractice } from '#ahead/explain/explain-practice'
import type { AheadTerm, NameOfPlace } from '#ui/ahead/ahead-types'
import { PracticeCard } from '#ui/ahead/practice-card'
import type { ByHand } from '#ui/ahead/use-by-hand'

type PracticesPartProps = {
  readonly squadId: string
  readonly term: AheadTerm
  readonly draft: AheadDraft
  readonly byHand: ByHand
  readonly nameOf: NameOfPlace
}

/** Every practice to come: what it is about, and why. */
export function PracticesPart({ squadId, term, draft, byHand, nameOf }: PracticesPartProps) {
  const { asked, best } = draft
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
            draft={draft}
            byHand={byHand}
          />
        ) : null
      })}
    </ol>
  )
}
