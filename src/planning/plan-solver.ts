import type { ClashPart } from '#rotation/clash'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'

/** The best plan that a search knows, and how fair any can be. */
export type SolvedSoFar = {
  readonly plan: RotationPlan
  readonly restLimitUsed: number | null
  readonly value: number
  readonly bound: number
}

/** How a search ended: by itself, by a stop, with no plan possible, or by a fault; with what it knew by then. */
export type SolveEnd =
  | { readonly kind: 'solved' | 'stopped' | 'failed'; readonly best: SolvedSoFar | null }
  | { readonly kind: 'impossible'; readonly clash: readonly ClashPart[] }

export type SolveWatch = {
  /** The plan that is known: what comes back is no less fair. */
  readonly start: RotationPlan
  readonly timeLimitMs: number
  readonly signal: AbortSignal
  readonly onProgress?: (best: SolvedSoFar & { readonly elapsedMs: number }) => void
}

/** The exact solver as pages see it: they know nothing of where and how it runs. */
export type PlanSolver = (problem: RotationProblem, watch: SolveWatch) => Promise<SolveEnd>
