import { leanBoard } from '#ahead/lean-board'
import type { AheadChoices, AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'

/** More than are ever needed in practice. */
const mostSweeps = 200

/**
 * Who gets more of what in which practice, for chosen offers: pairs of players exchange as long as both together gain.
 * First gently within each practice, so that catching up is spread over the weeks; then as far as is gentle over all of
 * them. It can always be played; the best there is, a linear program finds.
 */
export function leansFor(
  problem: AheadProblem,
  choices: AheadChoices,
  { sweeps = mostSweeps }: { readonly sweeps?: number } = {},
): AheadPlan['leans'] {
  const board = leanBoard(problem, choices)
  let left = sweeps
  for (const reach of ['inEach', 'overAll'] as const) while (left-- > 0 && board.sweep(reach));
  return board.leans()
}
