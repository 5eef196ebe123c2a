import type { AheadSolver } from '#ahead/draft/ahead-solver'
import type { AheadPlan, SolvedAhead } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import type { RotationColumn } from '#rotation/problem'

/** A plan with another theme in one practice, and how many expected minutes it is worse; below 0: it is better. */
export type OtherPlan = { readonly theme: number; readonly solved: SolvedAhead; readonly costs: number }

/**
 * Whether some plan brings a column inside its tolerance, as the flags see it and in expectation: `yes` where one is known
 * that does, `no` where it is proven that none can, `open` where neither was found in time.
 */
export type Reach = 'yes' | 'no' | 'open'
export type ReachOfPlayer = Readonly<Record<RotationColumn, Reach>>

type Watch = { readonly timeLimitMs: number; readonly signal: AbortSignal }

/** What a page asks of the exact solver; it knows nothing of where and how that runs. */
export type AheadEngine = {
  readonly solve: AheadSolver
  /** Empty where it was stopped. */
  readonly others: (
    problem: AheadProblem,
    of: Watch & { readonly solved: SolvedAhead; readonly practice: number },
  ) => Promise<readonly OtherPlan[]>
  /** By player. Null where it was stopped. */
  readonly reach: (
    problem: AheadProblem,
    of: Watch & { readonly start: AheadPlan },
  ) => Promise<readonly ReachOfPlayer[] | null>
}
