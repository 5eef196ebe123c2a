import { checkPlan } from '#rotation/check-plan'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'

/** The limit on waits in a row that a timetable keeps, never below the one asked for; null: none is asked. */
export function restLimitKept(problem: RotationProblem, plan: RotationPlan): number | null {
  if (problem.restLimit === null) return null
  for (let limit = problem.restLimit; limit < problem.turns.length; limit += 1) {
    const isKept = checkPlan({ ...problem, restLimit: limit }, plan).every(({ rule }) => rule !== 'restLimit')
    if (isKept) return limit
  }
  return Math.max(problem.restLimit, problem.turns.length)
}
