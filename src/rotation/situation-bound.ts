import { situations } from '#exposure/column'
import type { RotationProblem } from '#rotation/problem'

/**
 * No rotation is more even over the situations than this. What is given out equals what is due in every column, so
 * the gaps afterwards have the sum of the gaps before; at best everyone bears the same part of it. Low where that sum is
 * small, but never wrong.
 */
export function situationBound(problem: RotationProblem): number {
  const count = Math.max(1, problem.players.length)
  return situations.reduce((bound, situation) => {
    const sum = problem.players.reduce((all, { gap }) => all + gap[situation], 0)
    return bound + sum ** 2 / count
  }, 0)
}
