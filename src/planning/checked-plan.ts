import { accept, type Result, refuse } from '#common/result'
import { type PlanFault, planFaults } from '#planning/plan-faults'
import { proofOfPlan } from '#planning/plan-proof'
import { timetableOf } from '#planning/planned-turns'
import type { PracticePlan } from '#planning/practice-plan'
import { problemOfRequest, withFreeGames } from '#planning/problem-of-request'
import { quickPlan } from '#planning/quick-plan'
import { restLimitKept } from '#planning/rest-limit-kept'
import { planValues } from '#rotation/plan-values'

/**
 * A plan that came from outside as it may be kept: every rule checked, its value and sentence worked out anew. Of what it
 * says of itself only the bound is taken over, and only as long as no plan is known that is better than it allows.
 */
export function checkedPlan(plan: PracticePlan): Result<PracticePlan, PlanFault> {
  const timetable = timetableOf(plan)
  const restLimitUsed = timetable.ok
    ? restLimitKept(problemOfRequest(plan), timetable.value)
    : plan.rules.restLimit
  const told = { ...plan, proof: { ...plan.proof, restLimitUsed } }
  const faults = planFaults(told)
  if (faults.length > 0) return refuse(...faults)
  if (!timetable.ok) return accept(told)
  const problem = withFreeGames(problemOfRequest(plan), { request: plan, plan: timetable.value })
  const bound = isDisproved(told, problem) ? 0 : plan.proof.bound
  const proof = proofOfPlan(problem, { plan: timetable.value, bound, restLimitUsed })
  return accept({ ...plan, proof })
}

/** Whether a plan made at once already beats the bound, or the bound lies above the plan itself. */
function isDisproved(plan: PracticePlan, problem: Parameters<typeof planValues>[0]): boolean {
  if (plan.proof.bound <= 0) return false
  const timetable = timetableOf(plan)
  if (!timetable.ok) return true
  const value = planValues(problem, timetable.value).unfairness
  const slack = 1e-6 * Math.max(1, value)
  if (plan.proof.bound > value + slack) return true
  const quick = quickPlan(plan)
  if (!quick.ok) return true
  // Free games settled in another way are another problem, whose plans say nothing of this one.
  if (JSON.stringify(quick.value.problem.fixed) !== JSON.stringify(problem.fixed)) return false
  const { restLimitUsed } = plan.proof
  const isWithin = restLimitUsed === null || (quick.value.restLimitUsed ?? 0) <= restLimitUsed
  return isWithin && planValues(problem, quick.value.plan).unfairness < plan.proof.bound - slack
}
