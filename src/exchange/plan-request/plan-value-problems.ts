import type { Problem } from '#common/problem'
import { isDay } from '#common/time'
import { type JsonPath, problemAt } from '#exchange/json-path'
import { planLimits } from '#exchange/plan-request/plan-limits'
import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'
import { dayProblems } from '#exchange/value-problems'

/** Ids that things may be named by. */
export type Known = { readonly ids: ReadonlySet<string>; readonly list: string }

export function knownOf(list: string, things: readonly { readonly id: string }[]): Known {
  return { ids: new Set(things.map(({ id }) => id)), list }
}

export function tooManyProblems(count: number, allowed: number, at: JsonPath): readonly Problem[] {
  return count > allowed ? [problemAt(at, `are ${count}; ${allowed} or fewer would be right`)] : []
}

/** `what` says which: "a number of metres". */
export function betweenProblems(
  value: number | null | undefined,
  { least, most, what }: { readonly least: number; readonly most: number; readonly what: string },
  at: JsonPath,
): readonly Problem[] {
  if (value === undefined || value === null || (value >= least && value <= most)) return []
  return [problemAt(at, `is ${value}; ${what} from ${least} to ${most} would be right`)]
}

export function weekProblems(value: number | null | undefined, at: JsonPath): readonly Problem[] {
  if (value === undefined || value === null) return []
  if (Number.isInteger(value) && value >= 1 && value <= planLimits.weeks) return []
  return [problemAt(at, `is ${value}; a whole number of weeks from 1 to ${planLimits.weeks} would be right`)]
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
