import { type LeanReach, leanBoard } from '#ahead/lean-board'
import type { AheadChoices, AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'

/** Seconds over which bends of the value are rounded off, ever sharper. */
const sharpness = [300, 100, 30, 10, 2]
const sweepsInEach = 3
const usualSweeps = 12
/** A sweep that exchanges less than so many seconds is the last of its kind. */
const leastExchanged = 30

/**
 * Who gets more of what in which practice, for chosen offers: pairs of players exchange as long as both together gain.
 * First gently within each practice, so that catching up is spread over the weeks; then as far as is gentle over all of
 * them. It can always be played; the best there is, a linear program finds. `sweeps`: at most so many of each sharpness;
 * 0: everything is shared out evenly.
 */
export function leansFor(
  problem: AheadProblem,
  choices: AheadChoices,
  { sweeps = usualSweeps }: { readonly sweeps?: number } = {},
): AheadPlan['leans'] {
  const board = leanBoard(problem, choices)
  const go = (reach: LeanReach, rounded: number, most: number) => {
    for (let left = most; left > 0; left--) if (board.sweep(reach, rounded) < leastExchanged) break
  }
  go('inEach', sharpness[0] ?? 1, Math.min(sweeps, sweepsInEach))
  for (const rounded of sharpness) go('overAll', rounded, sweeps)
  return board.leans()
}
