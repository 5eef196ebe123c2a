import { instantOf } from '#common/instant-of'
import type { Day, Seconds } from '#common/time'
import type { CalendarEvent, EventTime } from '#exchange/icalendar/calendar-event'
import { namesAChild } from '#family/names-a-child'

/** A practice or match as far as a calendar shows it. */
export type SessionInCalendar = {
  readonly id: string
  readonly squadName: string
  readonly kind: 'practice' | 'match'
  readonly day: Day
  /** Empty when it has none. */
  readonly title: string
  /** Local time of day as `HH:MM`; null: not known. */
  readonly startsAt: string | null
  /** Empty: not known. */
  readonly place: string
  /** Null: not known. */
  readonly lengthSeconds: Seconds | null
  /** What it is planned to be about; null: nothing yet. */
  readonly themeName: string | null
  readonly isCancelled: boolean
  readonly revision: number
  readonly revisedAt: Date
}

type Around = {
  readonly timeZone: string
  /** Children of the squad: a calendar lies with whoever keeps it, so none of their names goes out. */
  readonly names: readonly string[]
}

/**
 * A session as an entry of a calendar. A title is left out when any word of it is part of a child's name; place and
 * theme, which people need, only with a whole name.
 */
export function eventOfSession(session: SessionInCalendar, { timeZone, names }: Around): CalendarEvent {
  const { id, squadName, kind, revision, revisedAt, isCancelled } = session
  const title = namesAChild(session.title, { names, by: 'anyPart' }) ? '' : session.title.trim()
  const told = (text: string) => (namesAChild(text, { names, by: 'wholeName' }) ? '' : text.trim())
  const theme = told(session.themeName ?? '')
  return {
    uid: id,
    revision,
    revisedAt,
    when: timeOf(session, timeZone),
    // Programs that do not show the status of an entry show its title.
    summary: `${isCancelled ? 'Cancelled: ' : ''}${squadName} ${kind}${title === '' ? '' : `, ${title}`}`,
    place: told(session.place),
    description: theme === '' ? '' : `Theme: ${theme}`,
    isCancelled,
  }
}

function timeOf({ day, startsAt, lengthSeconds }: SessionInCalendar, timeZone: string): EventTime {
  if (startsAt === null) return { kind: 'day', day }
  const [hours = 0, minutes = 0] = startsAt.split(':').map(Number)
  const start = instantOf({ day, minute: hours * 60 + minutes, timeZone })
  const end = lengthSeconds ? new Date(start.getTime() + lengthSeconds * 1000) : null
  return { kind: 'time', start, end }
}
