import type { Problem } from '#common/problem'
import { isDay } from '#common/time'
import { type JsonPath, problemAt } from '#exchange/json-path'
import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'
import { dayProblems } from '#exchange/value-problems'

type Said = number | null | undefined
type Range = { readonly least: number; readonly most: number; readonly what: string }

/** `what` says which: "a number of metres". */
export function betweenProblems(value: Said, { least, most, what }: Range, at: JsonPath): readonly Problem[] {
  if (value == null || (value >= least && value <= most)) return []
  return [problemAt(at, `is ${value}; ${what} from ${least} to ${most} would be right`)]
}

/** `what` says of which: "seats". */
export function wholeBetweenProblems(
  value: Said,
  { least, most, what }: Range,
  at: JsonPath,
): readonly Problem[] {
  if (value == null || (Number.isInteger(value) && value >= least && value <= most)) return []
  return [problemAt(at, `is ${value}; a whole number of ${what} from ${least} to ${most} would be right`)]
}

/** Two days, the second not before the first. */
export function spanProblems({ from, to }: PlanRequestJson['term'], at: JsonPath): readonly Problem[] {
  const each = [...dayProblems(from, [...at, 'from']), ...dayProblems(to, [...at, 'to'])]
  if (each.length > 0 || from <= to) return each
  return [problemAt([...at, 'to'], `is ${to}; a day not before ${from} would be right`)]
}

/** Days in order of time, each inside the term. */
export function datesProblems(
  dates: readonly string[],
  { term, list }: { readonly term: PlanRequestJson['term']; readonly list: 'practices' | 'met' },
): readonly Problem[] {
  return dates.flatMap((date, index) => {
    const at: JsonPath = [list, index, 'date']
    const before = dates[index - 1]
    if (!isDay(date)) return dayProblems(date, at)
    if (isDay(term.from) && isDay(term.to) && (date < term.from || date > term.to))
      return [problemAt(at, `is ${date}; a day of the term, from ${term.from} to ${term.to}, would be right`)]
    return before !== undefined && isDay(before) && date < before
      ? [problemAt(at, `is ${date}, before the one listed before it; in order of time would be right`)]
      : []
  })
}
