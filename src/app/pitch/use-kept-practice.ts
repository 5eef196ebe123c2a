'use client'

import { useEffect, useState } from 'react'
import { type KeptEvent, type KeptPractice, watchPractice } from '#app/pitch/pitch-store'

/** What this phone has of a practice, also as another tab of it changes it. */
export type OnPhone = {
  readonly practice: KeptPractice | null
  readonly events: readonly KeptEvent[]
}

/** `null` until the phone has looked; `'notKept'` when its browser keeps nothing. */
export function useKeptPractice(sessionId: string): OnPhone | null | 'notKept' {
  const [found, setFound] = useState<OnPhone | null | 'notKept'>(null)
  useEffect(
    () =>
      watchPractice(sessionId, {
        next: (practice, events) => setFound((before) => withSamePack({ practice, events }, before)),
        error: () => setFound('notKept'),
      }),
    [sessionId],
  )
  return found
}

/** Every tap is news; the plan and the names are not, as long as they were not fetched anew. */
function withSamePack(now: OnPhone, before: OnPhone | null | 'notKept'): OnPhone {
  const known = before === null || before === 'notKept' ? null : before.practice
  if (!now.practice || known?.fetchedAt !== now.practice.fetchedAt) return now
  return { ...now, practice: { ...now.practice, pack: known.pack } }
}
