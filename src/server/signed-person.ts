import 'server-only'
import { sign, unsign } from '#server/sign'

export type SignedPerson = { readonly clubId: string; readonly personId: string }

export const daysSignedIn = 30
const dayMs = 24 * 60 * 60 * 1000

/** A person as a text that only this installation can make, good for thirty days. */
export function signedPerson({ clubId, personId }: SignedPerson, now: Date): string {
  return sign(`${clubId}/${personId}/${now.getTime()}`)
}

/**
 * The person of such a text; null when it was not made here, or too long ago: a browser that keeps a cookie for longer
 * than it was told to is not believed.
 */
export function personOfSigned(signed: string, now: Date): SignedPerson | null {
  const [clubId, personId, at, ...rest] = unsign(signed)?.split('/') ?? []
  const age = now.getTime() - Number(at)
  // A clock that was put back must not sign anybody out.
  const isGood = age > -dayMs && age < daysSignedIn * dayMs
  return clubId && personId && isGood && rest.length === 0 ? { clubId, personId } : null
}
