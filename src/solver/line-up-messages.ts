import type { Seconds } from '#common/time'
import type { LineUpOffer } from '#lineup/draft/line-up-solver'
import type { LineUpClash } from '#lineup/find-line-up-clash'
import type { LineUp, LineUpPlan } from '#lineup/line-up'
import type { LineUpProblem } from '#lineup/problem'
import type { WayOut } from '#solver/line-up-ways-out'
import type { WorkerSettings } from '#solver/solver-settings'

export type LineUpWorkerSettings = WorkerSettings<LineUpPlan>

/** What a worker is asked for; one thing at a time. */
export type LineUpCall =
  | { readonly kind: 'solve'; readonly problem: LineUpProblem; readonly settings: LineUpWorkerSettings }
  | {
      readonly kind: 'waysOut'
      readonly problem: LineUpProblem
      readonly settings: LineUpWorkerSettings
      /** Seconds by which promises are missed; null: there is no line-up at all. */
      readonly missed: Seconds | null
    }
  | {
      readonly kind: 'tradeOffs'
      readonly problem: LineUpProblem
      readonly settings: LineUpWorkerSettings
      readonly lineUp: LineUp
    }

/** What a worker says: any number of times `progress`, then one of the others. */
export type LineUpWord =
  | { readonly kind: 'progress'; readonly lineUp: LineUp; readonly elapsedMs: number }
  | { readonly kind: 'solved'; readonly lineUp: LineUp }
  | { readonly kind: 'impossible'; readonly clash: readonly LineUpClash[] }
  | { readonly kind: 'waysOut'; readonly ways: readonly WayOut[] }
  | { readonly kind: 'tradeOffs'; readonly offers: readonly LineUpOffer[] }
  | { readonly kind: 'failed'; readonly message: string }
