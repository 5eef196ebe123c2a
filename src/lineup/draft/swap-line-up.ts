import { checkLineUp } from '#lineup/check-line-up'
import type { LineUpPlan, LineUpValues } from '#lineup/line-up'
import { lineUpValues } from '#lineup/line-up-values'
import type { LineUpProblem } from '#lineup/problem'
import type { LineUpFault } from '#lineup/rule'

/** Two players give each other their places in one window. Players and windows count from 0. */
export type LineUpSwap = { readonly one: number; readonly other: number; readonly window: number }

export type SwappedLineUp = {
  readonly plan: LineUpPlan
  /** Rules that it breaks then and did not break before. */
  readonly faults: readonly LineUpFault[]
  readonly before: LineUpValues
  readonly after: LineUpValues
}

/** A line-up with two places swapped, and what becomes of it. Null: they have the same place, there is nothing to swap. */
export function swapLineUp(
  problem: LineUpProblem,
  plan: LineUpPlan,
  { one, other, window }: LineUpSwap,
): SwappedLineUp | null {
  const placeOf = (player: number) => plan[player]?.[window] ?? null
  if (placeOf(one) === placeOf(other)) return null
  const swapped = plan.map((own, player) =>
    player === one || player === other
      ? own.map((place, at) => (at === window ? placeOf(player === one ? other : one) : place))
      : own,
  )
  const known = new Set(checkLineUp(problem, plan).map((fault) => JSON.stringify(fault)))
  return {
    plan: swapped,
    faults: checkLineUp(problem, swapped).filter((fault) => !known.has(JSON.stringify(fault))),
    before: lineUpValues(problem, plan),
    after: lineUpValues(problem, swapped),
  }
}
