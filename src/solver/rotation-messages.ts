import type { ClashPart } from '#rotation/clash'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'
import type { Rotation } from '#rotation/rotation'
import type { SolveProgress } from '#solver/solve-progress'
import type { WorkerSettings } from '#solver/solver-settings'

/** What a worker is asked for; one thing at a time. */
export type WorkerCall = {
  readonly kind: 'solve'
  readonly problem: RotationProblem
  /** A request that `start` answers is never impossible. */
  readonly settings: WorkerSettings<RotationPlan>
}

/** What a worker says: any number of times `progress`, then one of the others. */
export type WorkerWord =
  | { readonly kind: 'progress'; readonly progress: SolveProgress }
  | { readonly kind: 'solved'; readonly rotation: Rotation }
  | { readonly kind: 'impossible'; readonly clash: readonly ClashPart[] }
  | { readonly kind: 'failed'; readonly message: string }
