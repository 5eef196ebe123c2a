import type { Problem } from '#common/problem'
import { problemAt } from '#exchange/json-path'
import { wholeProblems } from '#exchange/value-problems'

/** What is wrong with how a request says to search. */
export function searchProblems({
  seed,
  timeLimitMs,
  workLimit,
}: {
  readonly seed?: number | undefined
  readonly timeLimitMs?: number | undefined
  readonly workLimit?: number | null | undefined
}): readonly Problem[] {
  return [
    ...(Number.isSafeInteger(seed ?? 1)
      ? []
      : [problemAt(['seed'], `is ${seed}; a whole number would be right`)]),
    ...wholeProblems(timeLimitMs, 0, ['timeLimitMs'], 'a whole number of milliseconds'),
    ...wholeProblems(workLimit ?? undefined, 0, ['workLimit'], 'a whole number'),
  ]
}
