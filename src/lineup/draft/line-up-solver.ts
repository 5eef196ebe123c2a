import type { Seconds } from '#common/time'
import type { LineUpClash } from '#lineup/find-line-up-clash'
import type { LineUp, LineUpPlan } from '#lineup/line-up'
import type { LineUpProblem, LineUpRules } from '#lineup/problem'

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

/** One thing that a coach may let go. Pairs and players are places in the problem's lists. */
export type LetGo =
  | { readonly what: keyof LineUpRules }
  | { readonly what: 'apart'; readonly pair: number }
  /** Every place of one player that is held. */
  | { readonly what: 'fixed'; readonly player: number }

/** The fairest line-up with fewer changes, and what the fewer changes cost. */
export type LineUpOffer = {
  readonly changes: number
  /** How many fewer than in the line-up that it is held against. */
  readonly fewer: number
  /** How many are further from what they are due than before, the furthest held against the furthest; and by how much at most. */
  readonly players: number
  readonly seconds: Seconds
  /** Seconds short of the least time beyond those before. */
  readonly short: Seconds
  /** No line-up with so few changes is more even. */
  readonly isProven: boolean
  readonly lineUp: LineUp
}

type Limits = { readonly timeLimitMs: number; readonly signal: AbortSignal }

/** All that the exact solver can be asked from a page. */
export type LineUpEngine = {
  readonly solve: LineUpSolver
  /** What helps where there is no line-up, or (`missed`) where that much of a promise is missed. */
  readonly waysOut: (
    problem: LineUpProblem,
    asked: Limits & { readonly missed: Seconds | null },
  ) => Promise<readonly LetGo[]>
  readonly tradeOffs: (
    problem: LineUpProblem,
    asked: Limits & { readonly lineUp: LineUp },
  ) => Promise<readonly LineUpOffer[]>
}
