import { expectedEnd } from '#ahead/expected-end'
import type { AheadPlan, ExpectedEnd } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'

/** How everyone is expected to stand when a practice of the plan begins. */
export function standingBefore(
  problem: AheadProblem,
  plan: AheadPlan,
  practice: number,
): readonly ExpectedEnd[] {
  return expectedEnd({ ...problem, practices: problem.practices.slice(0, practice) }, plan)
}
