import type { DaySpan } from '#ahead/request'
import { hasDay } from '#common/dated'
import { type Day, isoWeekOf } from '#common/time'
import { isoWeeksBetween } from '#common/weeks'

/** Says of a day its week of the term, by ISO weeks: the one that the first day lies in is 1. Null: it is not of the term. */
export function weekOfTerm(term: DaySpan): (day: Day) => number | null {
  const weeks = new Map(isoWeeksBetween(term).map((week, index) => [week, index + 1]))
  return (day) => (hasDay(term, day) ? (weeks.get(isoWeekOf(day)) ?? null) : null)
}
