import { seededChance } from '#common/chance'
import { checkLineUp } from '#lineup/check-line-up'
import { layFirstLineUp } from '#lineup/first-line-up'
import type { LineUpPlan } from '#lineup/line-up'
import { boardOf, planOfBoard } from '#lineup/line-up-board'
import type { LineUpProblem } from '#lineup/problem'
import { annealLineUp, settleLineUp } from '#lineup/search-line-up'
import { swapBoard } from '#lineup/swap-board'

/** Enough for most matches within a twentieth of a second; fixed, so that every phone finds the same. */
const steps = 40_000
const settleTries = 20_000
const attempts = 3

/**
 * A good line-up at once: laid window by window, then bettered by swaps, goals in their order. The same for the same
 * problem and seed. Null where none was found that keeps the rules, which does not say that there is none.
 */
export function quickLineUp(problem: LineUpProblem, { seed }: { readonly seed: number }): LineUpPlan | null {
  const chance = seededChance(seed)
  for (let attempt = 0; attempt < attempts; attempt += 1) {
    const board = boardOf(problem)
    // Where the first try breaks rules, the next begin elsewhere, hot enough to leave rules behind for a while.
    const isFirst = attempt === 0
    if (!layFirstLineUp(board, isFirst ? null : chance)) return null
    if (problem.players.length > 1 && problem.windows.length > 0) {
      annealLineUp(swapBoard(board), { steps, chance, isHot: !isFirst })
      settleLineUp(swapBoard(board), settleTries)
    }
    const plan = planOfBoard(board)
    if (checkLineUp(problem, plan).length === 0) return plan
  }
  return null
}
