import type { RotationPlan } from '#rotation/plan'

/** What a search is at: a first plan that keeps the rules, making it as even as can be, then the later goals. */
export type SolveStage = 'firstPlan' | 'evening' | 'finishing'

/** The best plan so far. It keeps every rule with the rest limit that it names. */
export type SolveProgress = {
  readonly stage: SolveStage
  readonly plan: RotationPlan
  readonly restLimitUsed: number | null
  /** Unfairness of the plan, seconds². */
  readonly value: number
  /** No plan has less; 0 as long as nothing is known. */
  readonly bound: number
  /** Since the request was read. */
  readonly elapsedMs: number
}

/** Told of every gain in plan or bound, while the search is running. */
export type OnProgress = (progress: SolveProgress) => void
