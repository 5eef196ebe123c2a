import 'server-only'
import { createHmac, timingSafeEqual } from 'node:crypto'

/** `text` with a signature behind it; only this installation can make it. */
export function sign(text: string): string {
  return `${text}.${signatureOf(text)}`
}

/** The text of a signed value, or null when it was not signed here. */
export function unsign(signed: string): string | null {
  const dot = signed.lastIndexOf('.')
  if (dot < 0) return null
  const text = signed.slice(0, dot)
  const given = Buffer.from(signed.slice(dot + 1))
  const expected = Buffer.from(signatureOf(text))
  return given.length === expected.length && timingSafeEqual(given, expected) ? text : null
}

function signatureOf(text: string): string {
  const secret = process.env.TURNBOOK_SECRET
  if (!secret || secret.length < 32) throw new Error('TURNBOOK_SECRET must be set to at least 32 characters')
  return createHmac('sha256', secret).update(text).digest('base64url')
}
