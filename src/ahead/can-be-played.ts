import { checkAhead } from '#ahead/check-ahead'
import { checkLeans } from '#ahead/check-leans'
import type { AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'

/** Whether a plan keeps every rule, and who gets more of what can be played. */
export function canBePlayed(problem: AheadProblem, plan: AheadPlan): boolean {
  return checkAhead(problem, plan.choices).length === 0 && checkLeans(problem, plan).length === 0
}
