import type { RotationPlan } from '#rotation/plan'
import type { PlanValues } from '#rotation/plan-values'

/** A value reached, a lower bound that no rotation under the same rules can beat, and whether the two meet. */
export type Proof = { readonly value: number; readonly bound: number; readonly proven: boolean }

export type RestLimitReport = {
  readonly asked: number | null
  readonly used: number | null
  readonly leastPossible: number | null
  readonly proven: boolean
  /** What the limit costs in unfairness: value ÷ best value without it − 1; null where that is not known. */
  readonly price: number | null
  /** The most that it can cost. */
  readonly priceAtMost: number | null
}

/** A finished rotation with its proofs. */
export type Rotation = {
  readonly plan: RotationPlan
  readonly values: PlanValues
  readonly restLimit: RestLimitReport
  readonly unfairness: Proof
  readonly situationUnfairness: Proof
  readonly mixing: Proof
}

/** Proven means: what is left between value and bound is a hair. */
export function proofOf(value: number, bound: number): Proof {
  const sound = Math.max(0, Math.min(value, bound))
  return { value, bound: sound, proven: value - sound <= 1e-6 * Math.max(1, value) }
}
