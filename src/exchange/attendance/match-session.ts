import type { SessionName } from '#exchange/attendance/attendance-entry'
import type { KnownSession } from '#exchange/attendance/attendance-plan'
import { nameKey } from '#exchange/table/name-form'

export type SessionMatch =
  | { readonly kind: 'one'; readonly session: KnownSession }
  | { readonly kind: 'nobody' }
  | { readonly kind: 'several' }
  /** Its code is another day's in the book. */
  | { readonly kind: 'otherDay'; readonly session: KnownSession }

/** The session of the book that a session of a file is: by code or id, else by day, kind and, among several, title. */
export function matchSession(known: readonly KnownSession[], name: SessionName): SessionMatch {
  const coded = name.code === null ? undefined : known.find((s) => s.id === name.code || s.code === name.code)
  if (coded) {
    const isSame = coded.day === name.day && coded.kind === name.kind
    return { kind: isSame ? 'one' : 'otherDay', session: coded }
  }
  if (name.code !== null) return { kind: 'nobody' }
  const thatDay = known.filter((session) => session.day === name.day && session.kind === name.kind)
  const titled = thatDay.filter(
    (session) => name.title !== '' && nameKey(session.title) === nameKey(name.title),
  )
  const fitting = titled.length > 0 ? titled : thatDay
  const [first, second] = fitting
  if (!first) return { kind: 'nobody' }
  return second ? { kind: 'several' } : { kind: 'one', session: first }
}
