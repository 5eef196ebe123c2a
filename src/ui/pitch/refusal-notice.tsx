'use client'

import { useState } from 'react'
import type { Deed } from '#pitch/pitch-event'
import type { Cast } from '#ui/pitch/cast'
import { deedWords } from '#ui/pitch/deed-words'
import { PitchButton } from '#ui/pitch/pitch-button'

/** What was tapped here and the book did not take; it counts nowhere. */
export type Refusal = { readonly id: string; readonly deed: Deed; readonly why: string | null }

/** "swap: Only a coach of the squad can change the plan." */
export function refusalSentence({ deed, why }: Refusal, cast: Pick<Cast, 'nameOf'>): string {
  return `${deedWords(deed, cast)}: ${why ?? 'The book did not take it.'}`
}

type RefusalNoticeProps = { readonly refusals: readonly Refusal[]; readonly cast: Cast }

/** Says once that something tapped here does not count after all; afterwards it stands under More. */
export function RefusalNotice({ refusals, cast }: RefusalNoticeProps) {
  const [seen, setSeen] = useState<ReadonlySet<string>>(new Set())
  const fresh = refusals.filter(({ id }) => !seen.has(id))
  if (fresh.length === 0) return null
  const sentences = [...new Set(fresh.map((refusal) => refusalSentence(refusal, cast)))]
  return (
    <div role="alert" className="space-y-2 border-2 border-ink p-2">
      <p className="font-bold">The book did not take this, and it does not count here either:</p>
      <ul className="list-disc pl-5">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <PitchButton onClick={() => setSeen(new Set([...seen, ...fresh.map(({ id }) => id)]))}>
        Seen
      </PitchButton>
    </div>
  )
}
