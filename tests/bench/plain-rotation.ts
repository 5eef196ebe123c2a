import { mayTakeIn } from '#rotation/may-take'
import type { RotationPlan } from '#rotation/plan'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import { addFairnessGoal } from '#solver/fairness-goal'
import { loadSolver } from '#solver/highs'
import { planOfSolution } from '#solver/plan-of-solution'
import { addRestRows } from '#solver/rest-rows'
import { rotationModel } from '#solver/rotation-model'
import { singleTurns } from '#solver/turn-groups'

/**
 * The peer: the whole timetable as one model, player by turn by place, given to HiGHS as it is, without a plan to begin
 * with. `near` only says where the costs are written down in full.
 */
export async function solvePlainly(
  problem: RotationProblem,
  asked: { readonly restLimit: number | null; readonly near: RotationPlan; readonly timeMs: number },
): Promise<{ readonly value: number; readonly ms: number; readonly isProven: boolean }> {
  const solver = await loadSolver()
  const began = performance.now()
  const model = rotationModel(problem, singleTurns(problem))
  if (asked.restLimit !== null) addRestRows(model, asked.restLimit)
  addFairnessGoal(model, asked.near)
  const answer = solver.solve(model.linear, { timeMs: asked.timeMs, work: null, seed: 1 })
  const ms = performance.now() - began
  const { restLimit } = asked
  const plan =
    answer.values && planOfSolution(model, mayTakeIn(problem), { values: answer.values, restLimit })
  return {
    // Of the plan itself: far from what is known the model's own figure is too low.
    value: plan ? planValues(problem, plan).unfairness : Number.POSITIVE_INFINITY,
    ms,
    isProven: answer.status === 'optimal',
  }
}
