import type { DaySpan } from '#ahead/request'
import { type Day, isoWeekOf } from '#common/time'
import { isoWeeksBetween } from '#common/weeks'

/** Weeks of a term by ISO week: the one that its first day lies in is 1. */
export function weeksOfTerm(term: DaySpan): ReadonlyMap<string, number> {
  return new Map(isoWeeksBetween(term).map((week, index) => [week, index + 1]))
}

/** Null: the day is not of the term. */
export function weekOfTerm(
  weeks: ReadonlyMap<string, number>,
  { term, day }: { readonly term: DaySpan; readonly day: Day },
): number | null {
  return isWithin(term, day) ? (weeks.get(isoWeekOf(day)) ?? null) : null
}

export function isWithin({ firstDay, lastDay }: DaySpan, day: Day): boolean {
  return firstDay <= day && day <= lastDay
}
