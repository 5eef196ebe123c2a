import 'server-only'
import type { Day } from '#common/time'

/** The day it is in a club's time zone at an instant. A demo club's calendar stands still on its own day. */
export function todayOf(
  club: { readonly timeZone: string; readonly calendarDay: Day | null },
  now: Date,
): Day {
  if (club.calendarDay) return club.calendarDay
  // en-CA writes days as YYYY-MM-DD.
  return new Intl.DateTimeFormat('en-CA', { timeZone: club.timeZone, dateStyle: 'short' }).format(now)
}
