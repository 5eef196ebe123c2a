import type { Proof } from '#common/proof'
import type { RotationPlan } from '#rotation/plan'
import type { PlanValues } from '#rotation/plan-values'

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
