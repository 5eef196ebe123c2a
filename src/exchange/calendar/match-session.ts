import type { CalendarEntry } from '#exchange/calendar/calendar-entry'
import type { KnownCalendarSession } from '#exchange/calendar/calendar-plan'
import { nameKey } from '#exchange/table/name-form'

export type SessionMatch =
  | { readonly kind: 'one'; readonly session: KnownCalendarSession; readonly by: 'code' | 'title' | 'day' }
  | { readonly kind: 'perhaps'; readonly candidates: readonly KnownCalendarSession[] }
  | { readonly kind: 'cancelled'; readonly candidates: readonly KnownCalendarSession[] }
  | { readonly kind: 'none' }

/**
 * Which session of the book a row speaks of: by its code, else by day, kind and title. Where the day has another one of
 * the kind, that may be the same under another name: then a person is asked. `taken`: those that other rows name surely.
 */
export function matchCalendarSession(
  entry: CalendarEntry,
  sessions: readonly KnownCalendarSession[],
  taken: ReadonlySet<string>,
): SessionMatch {
  const byCode = findByCode(entry.code, sessions)
  if (byCode?.isCancelled) return { kind: 'cancelled', candidates: [] }
  if (byCode) return { kind: 'one', session: byCode, by: 'code' }
  const ofDay = sessions.filter(({ day, kind }) => day === entry.day && kind === entry.kind)
  const held = ofDay.filter(({ isCancelled }) => !isCancelled)
  const exact = sameTitle(entry, held)
  if (exact.length > 1) return { kind: 'perhaps', candidates: exact }
  if (exact[0]) return { kind: 'one', session: exact[0], by: 'title' }
  const free = held.filter(({ id }) => !taken.has(id))
  const [only] = free
  if (free.length === 1 && only && mayBeSame(entry, only)) return { kind: 'one', session: only, by: 'day' }
  if (free.length > 0) return { kind: 'perhaps', candidates: free }
  return sameTitle(entry, ofDay).length > 0 && held.length === 0
    ? { kind: 'cancelled', candidates: [] }
    : { kind: 'none' }
}

/** A code that stands twice in the book names nobody; then its file carries ids. */
function findByCode(
  wanted: string | null,
  sessions: readonly KnownCalendarSession[],
): KnownCalendarSession | undefined {
  if (wanted === null) return undefined
  const [one, ...others] = sessions.filter(({ code }) => code === wanted)
  return one && others.length === 0 ? one : sessions.find(({ id }) => id === wanted)
}

/** Those of the same title; of several, those that begin at the same time. */
function sameTitle(
  { title, startsAt }: CalendarEntry,
  sessions: readonly KnownCalendarSession[],
): readonly KnownCalendarSession[] {
  const same = sessions.filter((session) => titleKey(session.title) === titleKey(title))
  const atTime = same.filter((session) => startsAt !== null && session.startsAt === startsAt)
  return atTime.length === 1 ? atTime : same
}

/** One of the two has no title, or a practice begins at the same time; and their times do not speak against it. */
function mayBeSame(entry: CalendarEntry, session: KnownCalendarSession): boolean {
  const isSameTime = entry.startsAt !== null && entry.startsAt === session.startsAt
  const isOtherTime = entry.startsAt !== null && session.startsAt !== null && !isSameTime
  const isUntitled = entry.title === '' || session.title === ''
  return !isOtherTime && (isUntitled || (entry.kind === 'practice' && isSameTime))
}

/** A title without the little words before an opponent. */
export function titleKey(title: string): string {
  return nameKey(title).replace(/^(?:v|vs|versus|against|at|gegen)\.?\s+/, '')
}
