import { securityTxt } from '#server/security-txt'
import { shortAnswer } from '#server/short-answer'

/** Served as /.well-known/security.txt. */
export function GET(): Response {
  const { TURNBOOK_CONTACT: contact = '', TURNBOOK_URL: address = '' } = process.env
  const text = securityTxt({ contact, address, now: new Date() })
  if (text === null) return shortAnswer(404, 'Nobody is named here.')
  return new Response(text, { headers: { 'content-type': 'text/plain; charset=utf-8' } })
}
