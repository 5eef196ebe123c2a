import type { AheadClash } from '#ahead/clash'
import type { SolvedAhead } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'

/** How a search ended, with the best it knew by then. */
export type AheadSearchEnd =
  | { readonly kind: 'solved' | 'stopped' | 'failed'; readonly best: SolvedAhead | null }
  | { readonly kind: 'impossible'; readonly clash: readonly AheadClash[] }

export type AheadSearchWatch = {
  /** The plan that is known; null: none yet. What comes back is no worse. */
  readonly start: SolvedAhead['plan'] | null
  readonly seed: number
  readonly timeLimitMs: number
  readonly signal: AbortSignal
  readonly onBetter?: (best: SolvedAhead) => void
}

/** The exact solver as pages see it: they know nothing of where and how it runs. */
export type AheadSolver = (problem: AheadProblem, watch: AheadSearchWatch) => Promise<AheadSearchEnd>
