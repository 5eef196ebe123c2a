'use client'

import type { Deed } from '#pitch/pitch-event'
import type { Cast } from '#ui/pitch/cast'
import { deedWords } from '#ui/pitch/deed-words'
import { NotTaken } from '#ui/pitch/not-taken'

/** What was tapped here and the book did not take; it counts nowhere. */
export type Refusal = { readonly id: string; readonly deed: Deed; readonly why: string | null }

/** "swap: Only a coach of the squad can change the plan." */
export function refusalSentence({ deed, why }: Refusal, cast: Pick<Cast, 'nameOf'>): string {
  return `${deedWords(deed, cast)}: ${why ?? 'The book did not take it.'}`
}

type RefusalNoticeProps = { readonly refusals: readonly Refusal[]; readonly cast: Cast }

export function RefusalNotice({ refusals, cast }: RefusalNoticeProps) {
  const told = refusals.map((refusal) => ({ id: refusal.id, sentence: refusalSentence(refusal, cast) }))
  return <NotTaken refusals={told} />
}
