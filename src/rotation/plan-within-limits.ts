import { seededChance } from '#common/chance'
import { anneal } from '#rotation/anneal'
import { layOut, planOf } from '#rotation/board'
import { allLimitExcess } from '#rotation/board-rules'
import { firstPlan } from '#rotation/first-plan'
import type { MayTake } from '#rotation/may-take'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'

/** How much waiting weighs in the plans begun with. */
const waitingWeights = [0, 4, 40]
const triesEach = 25_000

/**
 * A plan that keeps what single players agreed to (at most so many turns, a wait after each) and every other rule but
 * the limit on rests; the same for the same problem. `plan` null: a turn cannot be seated at all. `excess`: turns beyond
 * those limits in the best plan met; 0: it keeps them.
 */
export function planWithinLimits(
  problem: RotationProblem,
  mayTake: MayTake,
): { readonly plan: RotationPlan | null; readonly excess: number } {
  let best: { readonly plan: RotationPlan | null; readonly excess: number } = { plan: null, excess: 0 }
  for (const waitingWeight of waitingWeights) {
    const first = firstPlan(problem, mayTake, { waitingWeight, restLimit: problem.restLimit })
    if (first === null) return { plan: null, excess: 0 }
    const board = layOut(problem, first)
    const chance = seededChance(waitingWeight + 1)
    const wish = { goal: 'unfairness' as const, restLimit: null, stopWhenMended: true, mayGoOn: () => true }
    anneal(board, { ...wish, chance, tries: triesEach })
    const excess = allLimitExcess(board, null)
    if (best.plan === null || excess < best.excess) best = { plan: planOf(board), excess }
    if (excess === 0) break
  }
  return best
}
