import { firstPlan } from '#rotation/first-plan'
import type { RotationPlan } from '#rotation/plan'
import type { Solver } from '#solver/highs'
import { modelWithLimits } from '#solver/own-limit-rows'
import { planOfSolution } from '#solver/plan-of-solution'
import { addRestRows } from '#solver/rest-rows'
import { boardOf, legalPlan, lower, type Search, solveInTime } from '#solver/search'
import { singleTurns } from '#solver/turn-groups'

/** How much waiting weighs in the first plans that are tried, from even shares alone to whoever waited longest. */
const waitingWeights = [0.5, 4, 40]
/** Exchanges tried to keep the limit at all, and then for even shares; no more than so many for each player and turn. */
const mendingTries = 60_000
const evenTries = 400_000
const triesPerPlace = 1200

/** A plan that keeps every rule with this rest limit, made without the exact solver; null when none was met. */
export function findQuickly(search: Search, restLimit: number | null): RotationPlan | null {
  const { problem, mayTake } = search
  const most = triesPerPlace * problem.players.length * problem.turns.length
  for (const waitingWeight of restLimit === null ? [0] : waitingWeights) {
    const first = firstPlan(problem, mayTake, { waitingWeight, restLimit })
    if (first === null) return null
    const board = boardOf(search, first)
    const goal = 'unfairness'
    lower(search, board, { goal, restLimit, tries: Math.min(most, mendingTries), stopWhenMended: true })
    if (legalPlan(search, board, restLimit) === null) continue
    lower(search, board, { goal, restLimit, tries: Math.min(most, evenTries) })
    return legalPlan(search, board, restLimit)
  }
  return null
}

/**
 * Whether there is any plan with this rest limit, by the exact model of every turn: a plan, a proof that there is none,
 * or neither in the share of time given.
 */
export function findExactly(
  search: Search,
  solver: Solver,
  asked: { readonly restLimit: number | null; readonly share: number },
): { readonly plan: RotationPlan | null; readonly isImpossible: boolean } {
  const { restLimit, share } = asked
  const model = modelWithLimits(search.problem, singleTurns(search.problem))
  if (restLimit !== null) addRestRows(model, restLimit)
  const relaxed = solveInTime(search, solver, { model: model.linear, share, isRelaxed: true })
  if (relaxed.status === 'infeasible') return { plan: null, isImpossible: true }
  const answer = solveInTime(search, solver, { model: model.linear, share })
  if (answer.status === 'infeasible') return { plan: null, isImpossible: true }
  if (answer.values === null) return { plan: null, isImpossible: false }
  const plan = planOfSolution(model, search.mayTake, { values: answer.values, restLimit })
  const isLegal = plan !== null && legalPlan(search, boardOf(search, plan), restLimit) !== null
  return { plan: isLegal ? plan : null, isImpossible: false }
}
