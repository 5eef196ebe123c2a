import type { AheadClash } from '#ahead/clash'
import type { OtherPlan } from '#ahead/draft/ahead-engine'
import type { AheadPlan, SolvedAhead } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import type { ReachableEnds } from '#solver/reachable'
import type { WorkerSettings } from '#solver/solver-settings'

export type AheadWorkerSettings = WorkerSettings<AheadPlan>

/** What a worker is asked for; one thing at a time. */
export type AheadCall =
  | { readonly kind: 'solve'; readonly problem: AheadProblem; readonly settings: AheadWorkerSettings }
  | {
      readonly kind: 'alternatives'
      readonly problem: AheadProblem
      readonly settings: AheadWorkerSettings
      readonly solved: SolvedAhead
      readonly practice: number
    }
  | { readonly kind: 'reachable'; readonly problem: AheadProblem; readonly settings: AheadWorkerSettings }

/** What a worker says: any number of times `progress`, then one of the others. */
export type AheadWord =
  | { readonly kind: 'progress'; readonly best: SolvedAhead }
  | { readonly kind: 'solved'; readonly solved: SolvedAhead }
  | { readonly kind: 'impossible'; readonly clash: readonly AheadClash[] }
  | { readonly kind: 'alternatives'; readonly alternatives: readonly OtherPlan[] }
  | { readonly kind: 'reachable'; readonly ends: ReachableEnds }
  | { readonly kind: 'failed'; readonly message: string }
