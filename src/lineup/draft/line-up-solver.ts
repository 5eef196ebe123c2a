import type { LineUpClash } from '#lineup/find-line-up-clash'
import type { LineUp, LineUpPlan } from '#lineup/line-up'
import type { LineUpProblem } from '#lineup/problem'

/** How a search ended: by itself, by a stop, with no line-up possible, or by a fault; with the best it knew by then. */
export type LineUpSearchEnd =
  | { readonly kind: 'solved' | 'stopped' | 'failed'; readonly best: LineUp | null }
  | { readonly kind: 'impossible'; readonly clash: readonly LineUpClash[] }

export type LineUpSearchWatch = {
  /** The line-up that is known; null: none yet. */
  readonly start: LineUpPlan | null
  readonly timeLimitMs: number
  readonly signal: AbortSignal
  readonly onBetter?: (best: LineUp) => void
}

/** The exact solver as pages see it: they know nothing of where and how it runs. */
export type LineUpSolver = (problem: LineUpProblem, watch: LineUpSearchWatch) => Promise<LineUpSearchEnd>
