import type { RotationPlan } from '#rotation/plan'
import { planValues } from '#rotation/plan-values'
import { addFairnessGoal } from '#solver/fairness-goal'
import type { Solver } from '#solver/highs'
import { modelWithLimits } from '#solver/own-limit-rows'
import { planOfSolution } from '#solver/plan-of-solution'
import { addRestRows } from '#solver/rest-rows'
import { columnsOfPlan } from '#solver/rotation-model'
import { boardOf, legalPlan, lower, polishMs, type Search, solveInTime } from '#solver/search'
import { alikeTurns, singleTurns } from '#solver/turn-groups'

export type Fairest = { readonly plan: RotationPlan; readonly value: number; readonly bound: number }

type Asked = {
  readonly restLimit: number | null
  /** Share (of 1) of the time left. */
  readonly share: number
  /** Whether each turn is modelled by itself (exact) or turns alike are counted together (quick). */
  readonly byTurn: boolean
}

/** Relative difference below which a value counts as proven. */
const hair = 1e-6

/**
 * Looks for a fairer plan than one that is known, and for a bound, by the exact solver. The bound holds over all
 * rotations that keep the hard rules with the rest limit; the plan that comes back is the better of the two.
 */
export function improveExactly(search: Search, solver: Solver, known: Fairest, asked: Asked): Fairest {
  const { problem } = search
  const model = modelWithLimits(problem, asked.byTurn ? singleTurns(problem) : alikeTurns(problem))
  if (asked.restLimit !== null) addRestRows(model, asked.restLimit)
  const { unitSeconds } = addFairnessGoal(model, known.plan)
  const squared = unitSeconds ** 2
  const answer = solveInTime(search, solver, {
    model: model.linear,
    share: asked.share,
    start: columnsOfPlan(model, known.plan),
    boundWanted: (known.value - (hair / 2) * Math.max(1, known.value)) / squared,
  })
  const bound = Math.max(known.bound, answer.bound * squared)
  if (answer.values === null) return { ...known, bound }
  const plan = layOut(
    search,
    planOfSolution(model, search.mayTake, { values: answer.values, restLimit: asked.restLimit }),
    asked,
  )
  if (plan === null) return { ...known, bound }
  const { unfairness } = planValues(problem, plan)
  return unfairness < known.value ? { plan, value: unfairness, bound } : { ...known, bound }
}

/**
 * Mends rests beyond the limit by exchanges, first by such as leave every share as it is, then by any; those cost some
 * evenness, but keep most of what the exact solver found, above all who keeps when.
 */
function layOut(search: Search, plan: RotationPlan | null, asked: Asked): RotationPlan | null {
  if (plan === null) return null
  const board = boardOf(search, plan)
  const { restLimit } = asked
  for (const goal of ['situations', 'unfairness'] as const) {
    if (restLimit === null || legalPlan(search, board, restLimit) !== null) break
    const stopWhenMended = goal === 'situations'
    lower(search, board, { goal, restLimit, tries: 40_000, stopWhenMended, reserveMs: polishMs })
  }
  return legalPlan(search, board, restLimit)
}

/** A bound over all rotations without a rest limit, by the relaxed model: quick, and a little low. */
export function boundWithoutLimit(search: Search, solver: Solver, near: RotationPlan): number {
  const model = modelWithLimits(search.problem, alikeTurns(search.problem))
  const { unitSeconds } = addFairnessGoal(model, near)
  const answer = solveInTime(search, solver, { model: model.linear, share: 0.3, isRelaxed: true })
  return answer.status === 'optimal' ? answer.objective * unitSeconds ** 2 : 0
}
