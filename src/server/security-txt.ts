import 'server-only'

const dayMs = 24 * 60 * 60 * 1000
/** Recommended is less than a year: RFC 9116, section 2.5.5. */
const goodForDays = 180

/**
 * Whom to tell of a hole in this installation, by RFC 9116; null where nobody is named. `contact` is an address for
 * mail, or a link.
 */
export function securityTxt({
  contact,
  address,
  now,
}: {
  readonly contact: string
  /** What this installation is reached under; '' when it was not said. */
  readonly address: string
  readonly now: Date
}): string | null {
  const uri = contactUri(contact)
  if (uri === null) return null
  const lines = [
    `Contact: ${uri}`,
    `Expires: ${new Date(now.getTime() + goodForDays * dayMs).toISOString()}`,
    'Preferred-Languages: en',
    ...(address.startsWith('https:')
      ? [`Canonical: ${new URL('/.well-known/security.txt', address).href}`]
      : []),
  ]
  return `${lines.join('\r\n')}\r\n`
}

/** The contact as the RFC wants it, a URI, and a web address only by https. */
function contactUri(contact: string): string | null {
  const text = contact.trim()
  if (/^[^\s@:/]+@[^\s@:/]+$/.test(text)) return `mailto:${text}`
  if (/\s/.test(text) || !URL.canParse(text)) return null
  return /^(?:https|mailto|tel):/.test(text) ? text : null
}
