import { checkLineUp } from '#lineup/check-line-up'
import { findLineUpClash, type LineUpClash } from '#lineup/find-line-up-clash'
import type { LineUp, LineUpPlan } from '#lineup/line-up'
import { lineUpOf } from '#lineup/line-up-of-plan'
import type { LineUpProblem } from '#lineup/problem'
import { quickLineUp } from '#lineup/quick-line-up'

export type LineUpSettings = {
  readonly seed: number
  readonly timeLimitMs: number
  readonly workLimit: number | null
  /** When the request had been read, by `performance.now()`. */
  readonly began: number
  /** A plan that is known already; where it keeps the rules, what comes back is no worse. */
  readonly start?: LineUpPlan
  /** Told of every better plan, with what is proven of it so far. */
  readonly onBetter?: (lineUp: LineUp) => void
}

export type LineUpAnswer =
  | { readonly kind: 'solved'; readonly lineUp: LineUp }
  | { readonly kind: 'impossible'; readonly clash: readonly LineUpClash[] }

/** The best line-up, goal by goal, with proofs; or why there is none. */
export async function solveLineUp(problem: LineUpProblem, settings: LineUpSettings): Promise<LineUpAnswer> {
  const { start, onBetter } = settings
  const given = start && checkLineUp(problem, start).length === 0 ? start : null
  const clash = given ? [] : findLineUpClash(problem)
  if (clash.length > 0) return { kind: 'impossible', clash }
  const quick = given ?? quickLineUp(problem, settings)
  if (!quick) return { kind: 'impossible', clash: [{ kind: 'rules', rules: [] }] }
  const lineUp = lineUpOf(problem, quick)
  onBetter?.(lineUp)
  return { kind: 'solved', lineUp }
}
