import 'server-only'
import type { Day } from '#common/time'

/** The day it is in a club's time zone at an instant. A demo club's calendar stands still on its own day. */
export function todayOf(
  club: { readonly timeZone: string; readonly calendarDay: Day | null },
  now: Date,
): Day {
  return club.calendarDay ?? dayIn(club.timeZone, now)
}

/** The day an instant falls on in a time zone, whatever a calendar says. */
export function dayIn(timeZone: string, instant: Date): Day {
  // en-CA writes days as YYYY-MM-DD.
  return new Intl.DateTimeFormat('en-CA', { timeZone, dateStyle: 'short' }).format(instant)
}

/** The first instant of the next day in a time zone, to the second, whatever its clocks do in the night. */
export function midnightAfter(timeZone: string, instant: Date): Date {
  const day = dayIn(timeZone, instant)
  const second = 1000
  let before = Math.floor(instant.getTime() / second)
  // No day of any zone is longer than 26 hours.
  let after = before + 27 * 3600
  while (after - before > 1) {
    const middle = Math.floor((before + after) / 2)
    if (dayIn(timeZone, new Date(middle * second)) === day) before = middle
    else after = middle
  }
  return new Date(after * second)
}
