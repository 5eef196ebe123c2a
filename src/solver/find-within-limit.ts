import { firstPlan } from '#rotation/first-plan'
import type { RotationPlan } from '#rotation/plan'
import type { Solver } from '#solver/highs'
import { planOfSolution } from '#solver/plan-of-solution'
import { addRestRows } from '#solver/rest-rows'
import { rotationModel } from '#solver/rotation-model'
import { boardOf, legalPlan, lower, type Search, solveInTime } from '#solver/search'
import { singleTurns } from '#solver/turn-groups'

/** How much waiting weighs in the first plans that are tried, from even shares alone to whoever waited longest. */
const waitingWeights = [0.5, 4, 40]
/** Exchanges tried: many for the first, whose plan is as good as ever in so little time; few to find any plan at all. */
const triesFirst = 400_000
const triesLater = 100_000
/** No more than so many for each player and turn. */
const triesPerPlace = 1200

/** A plan that keeps every rule with this rest limit, made without the exact solver; null when none was met. */
export function findQuickly(search: Search, restLimit: number | null): RotationPlan | null {
  const most = triesPerPlace * search.problem.players.length * search.problem.turns.length
  const weights = restLimit === null ? [0] : waitingWeights
  for (const [index, waitingWeight] of weights.entries()) {
    const first = firstPlan(search.problem, search.mayTake, { waitingWeight, restLimit })
    if (first === null) return null
    const board = boardOf(search, first)
    lower(search, board, { goal: 'unfairness', restLimit, tries: Math.min(most, index === 0 ? triesFirst : triesLater) })
    const plan = legalPlan(search, board, restLimit)
    if (plan) return plan
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
  asked: { readonly restLimit: number; readonly share: number },
): { readonly plan: RotationPlan | null; readonly isImpossible: boolean } {
  const { restLimit, share } = asked
  const model = rotationModel(search.problem, singleTurns(search.problem))
  addRestRows(model, restLimit)
  const relaxed = solveInTime(search, solver, { model: model.linear, share, isRelaxed: true })
  if (relaxed.status === 'infeasible') return { plan: null, isImpossible: true }
  const answer = solveInTime(search, solver, { model: model.linear, share })
  if (answer.status === 'infeasible') return { plan: null, isImpossible: true }
  if (answer.values === null) return { plan: null, isImpossible: false }
  const plan = planOfSolution(model, search.mayTake, { values: answer.values, restLimit })
  const isLegal = plan !== null && legalPlan(search, boardOf(search, plan), restLimit) !== null
  return { plan: isLegal ? plan : null, isImpossible: false }
}
