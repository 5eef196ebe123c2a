import type { SearchSettings } from '#common/search-settings'

/** What a worker is told: nothing to call, and no time by a clock that is not its own. */
export type WorkerSettings<Plan> = SearchSettings & {
  /** A plan that is known already; where it keeps the rules, what comes back is no worse. */
  readonly start?: Plan
}

export type SolverSettings<Plan, Best> = WorkerSettings<Plan> & {
  /** When the request had been read, by `performance.now()`. */
  readonly began: number
  /** Told of every better plan, with what is proven of it so far. */
  readonly onBetter?: (best: Best) => void
}
