import { hasDay } from '#common/dated'
import { type Day, isDay } from '#common/time'

export const dateOrders = ['ymd', 'dmy', 'mdy'] as const
/** Which number comes first where a date is all numbers. */
export type DateOrder = (typeof dateOrders)[number]

/** First and last day between which a date without a year must fall. */
export type DaySpan = { readonly firstDay: Day; readonly lastDay: Day }

/**
 * The day a text means when its numbers stand in `order`, else null. Understands 31/12/2026, 31.12.26, 31-12-2026,
 * 2026-12-31, 20261231, 31 Dec 2026, Dec 31, 2026; a weekday before and a time of day after are passed over. A date
 * without a year is the one inside `within` that fits, if just one does. Years of two digits are 1970 to 2069.
 */
export function dayFrom(text: string, order: DateOrder, within: DaySpan | null): Day | null {
  const bare = withoutTime(withoutWeekday(text))
  return dayByName(bare, within) ?? dayByNumbers(bare, order, within)
}

/** Whether a text is a date in some order. */
export function isDateLike(text: string, within: DaySpan | null): boolean {
  return dateOrders.some((order) => dayFrom(text, order, within) !== null)
}

/** Texts whose form leaves no doubt: the year first, dots (day first, common practice), or the month by name. */
export function orderShown(text: string): DateOrder | 'any' | null {
  const bare = withoutTime(withoutWeekday(text))
  if (dayByName(bare, { firstDay: '2000-01-01', lastDay: '2000-12-31' })) return 'any'
  if (/^\d{4}(?:\D|\d{4}$)/.test(bare)) return 'ymd'
  return /^\d{1,2}\.\s?\d{1,2}\.?/.test(bare) ? 'dmy' : null
}

function withoutWeekday(text: string): string {
  return text.trim().replace(/^(?:mon|tue|tues|wed|thu|thur|thurs|fri|sat|sun)(?:[a-z]*day)?[.,]?\s+/i, '')
}

function withoutTime(text: string): string {
  return text.replace(/[T ]\d{1,2}:\d{2}(?::\d{2}(?:\.\d+)?)?(?:\s?[ap]m|Z)?$/i, '').trim()
}

const months = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
]

function dayByName(text: string, within: DaySpan | null): Day | null {
  const dayFirst = /^(\d{1,2})(?:st|nd|rd|th)?[\s./-]*([a-z]{3,9})\.?(?:[\s,./-]*(\d{4}|\d{2}))?$/i.exec(text)
  const monthFirst = /^([a-z]{3,9})\.?[\s-]*(\d{1,2})(?:st|nd|rd|th)?(?:[\s,.-]+(\d{4}|\d{2}))?$/i.exec(text)
  const found = dayFirst
    ? { day: dayFirst[1], month: dayFirst[2], year: dayFirst[3] }
    : monthFirst && { day: monthFirst[2], month: monthFirst[1], year: monthFirst[3] }
  if (!found) return null
  const name = (found.month ?? '').toLowerCase().replace(/^sept$/, 'sep')
  const month = months.findIndex((long) => long.startsWith(name)) + 1
  if (month === 0) return null
  return dayOf({ year: found.year, month, day: Number(found.day) }, within)
}

function dayByNumbers(text: string, order: DateOrder, within: DaySpan | null): Day | null {
  const whole = /^(\d{4})(\d{2})(\d{2})$/.exec(text)
  if (whole)
    return order === 'ymd'
      ? dayOf({ year: whole[1], month: Number(whole[2]), day: Number(whole[3]) }, within)
      : null
  // One kind of mark between the numbers; a last dot (31.12.) belongs to a date without a year.
  const parts = /^(\d{1,4})\s?([./-])\s?(\d{1,2})(?:\s?\2\s?(\d{4}|\d{1,2})|\.)?$/.exec(text)
  if (!parts) return null
  const [, first = '', , second = '', third] = parts
  if (order === 'ymd') {
    return first.length === 4 && third !== undefined && third.length <= 2
      ? dayOf({ year: first, month: Number(second), day: Number(third) }, within)
      : null
  }
  if (first.length > 2 || third?.length === 1) return null
  const [day, month] = order === 'dmy' ? [Number(first), Number(second)] : [Number(second), Number(first)]
  return dayOf({ year: third, month, day }, within)
}

function dayOf(
  date: { readonly year: string | undefined; readonly month: number; readonly day: number },
  within: DaySpan | null,
): Day | null {
  const inYear = (year: number) => {
    const text = `${String(year).padStart(4, '0')}-${String(date.month).padStart(2, '0')}-${String(date.day).padStart(2, '0')}`
    return isDay(text) ? text : null
  }
  if (date.year !== undefined) return inYear(fullYear(date.year))
  if (!within) return null
  const years = [...new Set([Number(within.firstDay.slice(0, 4)), Number(within.lastDay.slice(0, 4))])]
  const fitting = years.map(inYear).filter((day) => day !== null && hasDay(within, day))
  return fitting.length === 1 ? (fitting[0] ?? null) : null
}

function fullYear(digits: string): number {
  const year = Number(digits)
  if (digits.length > 2) return year
  return year < 70 ? 2000 + year : 1900 + year
}
