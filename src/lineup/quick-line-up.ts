import { type Chance, seededChance } from '#common/chance'
import { checkLineUp } from '#lineup/check-line-up'
import { layFirstLineUp } from '#lineup/first-line-up'
import { type LineUpPlan, lineUpGoals } from '#lineup/line-up'
import { boardOf, planOfBoard } from '#lineup/line-up-board'
import { lineUpValues } from '#lineup/line-up-values'
import type { LineUpProblem } from '#lineup/problem'
import { annealLineUp, settleLineUp } from '#lineup/search-line-up'
import { swapBoard } from '#lineup/swap-board'

/** Enough for most matches within a twentieth of a second; fixed, so that every phone finds the same. */
const usualSteps = 40_000
const settleTries = 20_000
/** Searches of a small problem, which share the steps; and how many searches are tried until one keeps the rules. */
const mostSearches = 4
const wholeSearch = 100

/**
 * A good line-up at once: laid window by window, then bettered by swaps, goals in their order. The same for the same
 * problem, seed and steps; with fewer steps it is there sooner, and less good. Null where none was found that keeps the
 * rules, which does not say that there is none.
 */
export function quickLineUp(
  problem: LineUpProblem,
  { seed, steps = usualSteps }: { readonly seed: number; readonly steps?: number },
): LineUpPlan | null {
  const chance = seededChance(seed)
  const places = problem.players.length * problem.windows.length
  const searches = Math.max(1, Math.min(mostSearches, Math.round(wholeSearch / places)))
  let best: LineUpPlan | null = null
  for (let search = 0; search < mostSearches; search += 1) {
    if (search >= searches && best) break
    const plan = searchOnce(problem, { chance, isFirst: search === 0, steps: Math.ceil(steps / searches) })
    if (plan === 'impossible') return null
    if (plan && (!best || isBetter(problem, plan, best))) best = plan
  }
  return best
}

/** The first search begins where sense says; the next begin anywhere, hot enough to leave rules behind for a while. */
function searchOnce(
  problem: LineUpProblem,
  run: { readonly chance: Chance; readonly isFirst: boolean; readonly steps: number },
): LineUpPlan | 'impossible' | null {
  const board = boardOf(problem)
  if (!layFirstLineUp(board, run.isFirst ? null : run.chance)) return 'impossible'
  if (board.playerCount > 1 && board.windowCount > 0) {
    annealLineUp(swapBoard(board), { steps: run.steps, chance: run.chance, isHot: !run.isFirst })
    settleLineUp(swapBoard(board), settleTries)
  }
  const plan = planOfBoard(board)
  return checkLineUp(problem, plan).length === 0 ? plan : null
}

function isBetter(problem: LineUpProblem, one: LineUpPlan, other: LineUpPlan): boolean {
  const [values, against] = [lineUpValues(problem, one), lineUpValues(problem, other)]
  const goal = lineUpGoals.find((own) => Math.abs(values[own] - against[own]) > 1e-6)
  return goal !== undefined && values[goal] < against[goal]
}
