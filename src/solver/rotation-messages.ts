import type { ClashPart } from '#rotation/clash'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'
import type { Rotation } from '#rotation/rotation'
import type { SolveProgress } from '#solver/solve-progress'

/** How long and how a worker may search. */
export type WorkerSettings = {
  readonly seed: number
  readonly timeLimitMs: number
  readonly workLimit: number | null
  /** The plan that is there already: what comes back is no less fair, and a request that it answers is never impossible. */
  readonly start?: RotationPlan
}

/** What a worker is asked for; one thing at a time. */
export type WorkerCall = {
  readonly kind: 'solve'
  readonly problem: RotationProblem
  readonly settings: WorkerSettings
}

/** What a worker says: any number of times `progress`, then one of the others. */
export type WorkerWord =
  | { readonly kind: 'progress'; readonly progress: SolveProgress }
  | { readonly kind: 'solved'; readonly rotation: Rotation }
  | { readonly kind: 'impossible'; readonly clash: readonly ClashPart[] }
  | { readonly kind: 'failed'; readonly message: string }
