import { compareLineUps } from '#lineup/draft/compare-line-ups'
import { withKnownProofs } from '#lineup/draft/known-proofs'
import type { LineUpSolver } from '#lineup/draft/line-up-solver'
import { type LineUp, lineUpGoals } from '#lineup/line-up'
import { lineUpOf } from '#lineup/line-up-of-plan'
import { lineUpValues } from '#lineup/line-up-values'
import { quickLineUp } from '#lineup/quick-line-up'

/** More than so many beginnings seldom find anything new. */
const mostBeginnings = 8

/**
 * A search without the exact solver: the quick one from other beginnings, one after another, until what arithmetic can
 * prove is reached. `rest` lets the page breathe in between.
 */
export function searchMoreLineUps(rest: () => Promise<void>): LineUpSolver {
  return async (problem, { start, signal, onBetter }) => {
    let best: LineUp | null = start && lineUpOf(problem, start)
    for (let seed = 2; seed < 2 + mostBeginnings; seed += 1) {
      await rest()
      if (signal.aborted) return { kind: 'stopped', best }
      if (best && lineUpGoals.every((goal) => best?.proofs[goal].proven)) break
      const plan = quickLineUp(problem, { seed })
      if (!plan) continue
      const found = lineUpOf(problem, plan)
      if (!best || compareLineUps(lineUpValues(problem, plan), lineUpValues(problem, best.plan)) < 0) {
        best = withKnownProofs(problem, plan, (best ?? found).proofs)
        onBetter?.(best)
      }
    }
    return { kind: 'solved', best }
  }
}
