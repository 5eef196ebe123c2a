// One by one: the whole of date-fns takes a quarter of a second to load.
import { getISOWeek } from 'date-fns/getISOWeek'
import { getISOWeekYear } from 'date-fns/getISOWeekYear'

/** Whole seconds. Minutes exist only on pages. */
export type Seconds = number

/** A day of the calendar as `YYYY-MM-DD`; it has no time zone, so no clock change can move it. */
export type Day = string

/** Every day that `isDay` knows. */
export const allDays = { from: '0001-01-01', to: '9999-12-31' } as const satisfies Record<string, Day>

/** Half-open: `from` belongs to it, `to` does not. `from < to` always. */
export type Interval = { readonly from: Seconds; readonly to: Seconds }

export const secondsInMinute = 60

/** True for a day that is in the (proleptic Gregorian) calendar, years 1 to 9999, written `YYYY-MM-DD`. */
export function isDay(text: string): text is Day {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text) || text.startsWith('0000')) return false
  // In UTC, where every day exists: some zones have skipped one. A day past its month's end comes back as another.
  const { year, month, date } = partsOf(text)
  const day = new Date(0)
  day.setUTCFullYear(year, month - 1, date)
  return day.getUTCMonth() === month - 1 && day.getUTCDate() === date
}

/** ISO 8601 week of a day, e.g. `2026-W53`. Source: ISO 8601 week date, by date-fns. */
export function isoWeekOf(day: Day): string {
  const { year, month, date } = partsOf(day)
  const local = new Date(2000, 0, 1)
  local.setFullYear(year, month - 1, date)
  return `${getISOWeekYear(local)}-W${String(getISOWeek(local)).padStart(2, '0')}`
}

function partsOf(day: Day): { readonly year: number; readonly month: number; readonly date: number } {
  return { year: Number(day.slice(0, 4)), month: Number(day.slice(5, 7)), date: Number(day.slice(8, 10)) }
}
