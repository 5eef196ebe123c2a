import type { LineUpClash } from '#lineup/find-line-up-clash'
import type { LineUp, LineUpPlan } from '#lineup/line-up'
import type { LineUpProblem } from '#lineup/problem'

/** How long and how a worker may search. */
export type LineUpWorkerSettings = {
  readonly seed: number
  readonly timeLimitMs: number
  readonly workLimit: number | null
  /** The plan that is there already: what comes back is no worse. */
  readonly start?: LineUpPlan
}

/** What a worker is asked for; one thing at a time. */
export type LineUpCall = {
  readonly kind: 'solve'
  readonly problem: LineUpProblem
  readonly settings: LineUpWorkerSettings
}

/** What a worker says: any number of times `progress`, then one of the others. */
export type LineUpWord =
  | { readonly kind: 'progress'; readonly lineUp: LineUp; readonly elapsedMs: number }
  | { readonly kind: 'solved'; readonly lineUp: LineUp }
  | { readonly kind: 'impossible'; readonly clash: readonly LineUpClash[] }
  | { readonly kind: 'failed'; readonly message: string }
