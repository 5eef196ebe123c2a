import type { Problem } from '#common/problem'
import { isDay } from '#common/time'
import { type JsonPath, problemAt, quote } from '#exchange/json-path'

/** Seconds are whole and never negative, and small enough to be counted exactly. */
export function secondsProblems(value: number | undefined, at: JsonPath): readonly Problem[] {
  if (value === undefined || (Number.isSafeInteger(value) && value >= 0)) return []
  return [problemAt(at, `is ${value}; a whole number of seconds, 0 or more, would be right`)]
}

/** A whole number, not below the least; `what` says which: "a whole number of seats". */
export function wholeProblems(
  value: number | undefined,
  least: number,
  at: JsonPath,
  what: string,
): readonly Problem[] {
  if (value === undefined || (Number.isSafeInteger(value) && value >= least)) return []
  return [problemAt(at, `is ${value}; ${what}, ${least} or more, would be right`)]
}

export function shareProblems(value: number | undefined, at: JsonPath): readonly Problem[] {
  if (value === undefined || (value >= 0 && value <= 1)) return []
  return [problemAt(at, `is ${value}; a share from 0 to 1 would be right`)]
}

export function dayProblems(text: string, at: JsonPath): readonly Problem[] {
  if (isDay(text)) return []
  return [problemAt(at, `is ${quote(text)}; a day of the calendar as YYYY-MM-DD would be right`)]
}

export function tooManyProblems(count: number, allowed: number, at: JsonPath): readonly Problem[] {
  return count > allowed ? [problemAt(at, `are ${count}; ${allowed} or fewer would be right`)] : []
}

/** Ids that things of a list may be named by; null: the list could not be read, so nothing can be said. */
export type KnownIds = { readonly ids: ReadonlySet<string> | null; readonly list: string }

export function knownIdsOf(list: string, things: readonly { readonly id: string }[]): KnownIds {
  return { ids: new Set(things.map(({ id }) => id)), list }
}

/** An id must be among those known. */
export function unknownIdProblems(id: string, at: JsonPath, known: KnownIds): readonly Problem[] {
  if (known.ids === null || known.ids.has(id)) return []
  return [
    problemAt(at, `${quote(id)} is not an id of ${known.list}; one that is listed there would be right`),
  ]
}

/** Ids that were used before; the problem stands at the later one. */
export function doubledIdProblems(
  ids: readonly { readonly id: string; readonly at: JsonPath }[],
  what: string,
): readonly Problem[] {
  const seen = new Set<string>()
  return ids.flatMap(({ id, at }) => {
    if (seen.has(id))
      return [problemAt(at, `${quote(id)} is used twice; an id of its own for each ${what} would be right`)]
    seen.add(id)
    return []
  })
}
