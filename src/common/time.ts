// One by one: the whole of date-fns takes a quarter of a second to load.
import { getISOWeek } from 'date-fns/getISOWeek'
import { getISOWeekYear } from 'date-fns/getISOWeekYear'
import { isValid } from 'date-fns/isValid'
import { parse } from 'date-fns/parse'

/** Whole seconds. Minutes exist only on pages. */
export type Seconds = number

/** A day of the calendar as `YYYY-MM-DD`; it has no time zone, so no clock change can move it. */
export type Day = string

/** Half-open: `from` belongs to it, `to` does not. `from < to` always. */
export type Interval = { readonly from: Seconds; readonly to: Seconds }

export const secondsInMinute = 60

/** True for a day that is in the (proleptic Gregorian) calendar, written `YYYY-MM-DD`. */
export function isDay(text: string): text is Day {
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && isValid(dateOfDay(text))
}

/** ISO 8601 week of a day, e.g. `2026-W53`. Source: ISO 8601 week date, by date-fns. */
export function isoWeekOf(day: Day): string {
  const date = dateOfDay(day)
  return `${getISOWeekYear(date)}-W${String(getISOWeek(date)).padStart(2, '0')}`
}

// Local midnight on both sides of the parse, so the zone of the machine cancels out.
function dateOfDay(day: Day): Date {
  return parse(day, 'yyyy-MM-dd', new Date(2000, 0, 1))
}
