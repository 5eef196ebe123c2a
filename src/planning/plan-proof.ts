import { countWord } from '#common/count-word'
import type { PlanProof } from '#planning/practice-plan'
import type { RotationPlan } from '#rotation/plan'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import { proofOf } from '#rotation/rotation'

/** A plan's worth against what is known of the best, with the sentence that says so. */
export function proofOfPlan(
  problem: RotationProblem,
  of: { readonly plan: RotationPlan; readonly bound: number; readonly restLimitUsed: number | null },
): PlanProof {
  const { value, bound, proven } = proofOf(planValues(problem, of.plan).unfairness, of.bound)
  const players = problem.players.filter(({ present }) => present.some((isThere) => isThere)).length
  const sentence = sayProof({ value, bound, proven, players })
  return { sentence, value, bound, proven, restLimitUsed: of.restLimitUsed }
}

/** "As fair as eleven allow: nothing fairer is possible." Value and bound in seconds². */
export function sayProof(of: {
  readonly value: number
  readonly bound: number
  readonly proven: boolean
  readonly players: number
}): string {
  const { value, bound, proven, players } = of
  if (proven) return `As fair as ${countWord(players)} allow: nothing fairer is possible.`
  const percent = bound > 0 ? ((value - bound) / bound) * 100 : Number.POSITIVE_INFINITY
  if (percent <= 100) return `Within ${Math.max(1, Math.ceil(percent))} % of the best possible.`
  return 'A fair plan that keeps every rule; how much fairer one could be is not known.'
}
