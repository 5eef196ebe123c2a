import 'server-only'
import { createHash, timingSafeEqual } from 'node:crypto'
import { sign, unsign } from '#server/sign'

export type PassPlace = { readonly clubId: string; readonly passId: string }

/**
 * The secret of a pass: this installation's own signature under its name, so that the page can show the code again
 * until midnight and the database never holds it.
 */
export function secretOfPass({ clubId, passId }: PassPlace): string {
  return sign(`helper pass/${clubId}/${passId}`).split('.').at(-1) ?? ''
}

/** What is kept of a secret: SHA-256, as 64 hexadecimal digits. */
export function hashOfSecret(secret: string): string {
  return createHash('sha256').update(secret).digest('hex')
}

export function isSecretOf(secret: string, hash: string): boolean {
  const given = Buffer.from(hashOfSecret(secret))
  const kept = Buffer.from(hash)
  return given.length === kept.length && timingSafeEqual(given, kept)
}

/** The last part of a link to join: `<clubId>.<passId>.<secret>`. */
export function codeOfPass(place: PassPlace): string {
  return `${place.clubId}.${place.passId}.${secretOfPass(place)}`
}

/** The parts of such a text; null when it has none. Whether they open anything is for the database to say. */
export function passOfCode(code: string): (PassPlace & { readonly secret: string }) | null {
  const [clubId, passId, secret, ...rest] = code.split('.')
  return clubId && passId && secret && rest.length === 0 ? { clubId, passId, secret } : null
}

/** A pass as a text that only this installation can make: what a helper's browser keeps. */
export function signedPass({ clubId, passId }: PassPlace): string {
  return sign(`helper/${clubId}/${passId}`)
}

/** The pass of such a text; null when it was not made here, or is something else that was. */
export function passOfSigned(signed: string): PassPlace | null {
  const [kind, clubId, passId, ...rest] = unsign(signed)?.split('/') ?? []
  return kind === 'helper' && clubId && passId && rest.length === 0 ? { clubId, passId } : null
}
