import { daysLater } from '#common/days-later'
import type { Day } from '#common/time'

/** How long there is to answer a family, and by how much longer it may take where the request is hard: law of the EU and the UK, article 12(3). */
export const monthsToAnswer = 1
export const monthsMore = 2

/**
 * The last day to answer what was received on a day: the same date so many months later, the last day of a month that
 * has no such date, and the next working day where that is a Saturday, a Sunday or one of the `holidays`. As periods in
 * months are counted by Regulation (EEC, Euratom) 1182/71, article 3, and by the guidance of the UK's commissioner.
 */
export function dueDay(
  receivedOn: Day,
  { months, holidays }: { readonly months: number; readonly holidays: readonly Day[] },
): Day {
  let day = monthsLater(receivedOn, months)
  while (isWeekend(day) || holidays.includes(day)) day = daysLater(day, 1)
  return day
}

/** The same date so many months later; where that month has none, its last day. */
export function monthsLater(day: Day, months: number): Day {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number)
  const first = new Date(0)
  first.setUTCFullYear(year, month - 1 + months, 1)
  const lastOfMonth = new Date(first)
  lastOfMonth.setUTCMonth(first.getUTCMonth() + 1, 0)
  first.setUTCDate(Math.min(date, lastOfMonth.getUTCDate()))
  return first.toISOString().slice(0, 10)
}

function isWeekend(day: Day): boolean {
  const weekday = new Date(`${day}T00:00:00.000Z`).getUTCDay()
  return weekday === 0 || weekday === 6
}
