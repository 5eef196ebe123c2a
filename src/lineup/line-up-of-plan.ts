import { type Proof, proofOf } from '#common/proof'
import { type LineUp, type LineUpGoal, type LineUpPlan, lineUpGoals } from '#lineup/line-up'
import { lineUpBounds, noBounds } from '#lineup/line-up-bounds'
import { lineUpValues } from '#lineup/line-up-values'
import type { LineUpProblem } from '#lineup/problem'

/**
 * A plan with what arithmetic alone can prove of it, goal by goal. A bound speaks of plans that are best in the goals
 * before; where one of those is not proven, nothing is claimed of what follows.
 */
export function lineUpOf(problem: LineUpProblem, plan: LineUpPlan): LineUp {
  const values = lineUpValues(problem, plan)
  const bounds = lineUpBounds(problem, values)
  const proofs = {} as Record<LineUpGoal, Proof>
  let isBestSoFar = true
  for (const goal of lineUpGoals) {
    const proof = proofOf(values[goal], (isBestSoFar ? bounds : noBounds)[goal])
    proofs[goal] = proof
    isBestSoFar &&= proof.proven
  }
  return { plan, proofs }
}
