'use client'

import { OneMatch } from '#app/pitch/one-match'
import { OnePractice } from '#app/pitch/one-practice'
import { useSessionOnPhone } from '#app/pitch/use-session-on-phone'
import { NoPractice } from '#ui/pitch/no-practice'

/** A practice or a match on this phone. */
export function OneSession({ sessionId }: { readonly sessionId: string }) {
  const phone = useSessionOnPhone(sessionId)
  const { practice } = phone
  if (practice === null) return null
  if (practice === 'missing') return <NoPractice signal={phone.signal} />
  const { pack } = practice
  if ('kind' in pack) return <OneMatch pack={pack} phone={phone} />
  return <OnePractice pack={pack} phone={phone} />
}
