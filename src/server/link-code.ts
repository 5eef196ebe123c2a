import 'server-only'
import { randomBytes } from 'node:crypto'
import { isId } from '#data/ids'

/** Where a link stands, and the secret that opens it. */
export type LinkCode = { readonly clubId: string; readonly linkId: string; readonly secret: string }

/** 256 bits, as base64url. ASVS 5.0 asks for 128 at the least (7.2.3). */
const secretBytes = 32

export function newSecret(): string {
  return randomBytes(secretBytes).toString('base64url')
}

/** The last part of a link: `<clubId>.<linkId>.<secret>`. */
export function textOfCode({ clubId, linkId, secret }: LinkCode): string {
  return `${clubId}.${linkId}.${secret}`
}

/** The parts of such a text; null when it is none. Whether it opens anything is for the database to say. */
export function codeOfText(text: string): LinkCode | null {
  const [clubId = '', linkId = '', secret = '', ...rest] = text.split('.')
  const isCode = isId(clubId) && isId(linkId) && /^[A-Za-z0-9_-]{43}$/.test(secret) && rest.length === 0
  return isCode ? { clubId, linkId, secret } : null
}
