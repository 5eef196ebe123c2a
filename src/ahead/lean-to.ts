import { leanBoard } from '#ahead/lean-board'
import type { AheadChoices, AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'

/** Sweeps within each practice, then over all; the first few do nearly everything. */
const usualSweeps = { inEach: 3, overAll: 30 }
/** A sweep that gains less than so many seconds is the last. */
const leastGain = 6

/**
 * Who gets more of what in which practice, for chosen offers: pairs of players exchange as long as both together gain.
 * First gently within each practice, so that catching up is spread over the weeks; then as far as is gentle over all of
 * them. It can always be played; the best there is, a linear program finds.
 */
export function leansFor(
  problem: AheadProblem,
  choices: AheadChoices,
  sweeps: { readonly inEach: number; readonly overAll: number } = usualSweeps,
): AheadPlan['leans'] {
  const board = leanBoard(problem, choices)
  for (const reach of ['inEach', 'overAll'] as const)
    for (let left = sweeps[reach]; left > 0; left--) if (board.sweep(reach) < leastGain) break
  return board.leans()
}
