import type { DaySpan } from '#ahead/request'
import { hasDay } from '#common/dated'
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
  return hasDay(term, day) ? (weeks.get(isoWeekOf(day)) ?? null) : null
}
