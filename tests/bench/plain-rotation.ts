import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'
import { addFairnessGoal } from '#solver/fairness-goal'
import { loadSolver } from '#solver/highs'
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
  const { unitSeconds } = addFairnessGoal(model, asked.near)
  const answer = solver.solve(model.linear, { timeMs: asked.timeMs, work: null, seed: 1 })
  return {
    value: answer.objective * unitSeconds ** 2,
    ms: performance.now() - began,
    isProven: answer.status === 'optimal',
  }
}
