import { type Proof, proofOf } from '#common/proof'
import { isSameValue } from '#lineup/compare-line-ups'
import { type LineUp, type LineUpGoal, type LineUpPlan, lineUpGoals } from '#lineup/line-up'
import { lineUpOf } from '#lineup/line-up-of-plan'
import type { LineUpProblem } from '#lineup/problem'

type Proofs = Readonly<Record<LineUpGoal, Proof>>

/**
 * A plan with what arithmetic proves of it, and what was proven of another plan of the same problem. A bound speaks of
 * plans that reach the same in the goals before it; from the first goal on in which the two differ, only its own holds.
 */
export function withKnownProofs(problem: LineUpProblem, plan: LineUpPlan, known: Proofs): LineUp {
  const own = lineUpOf(problem, plan)
  const proofs = {} as Record<LineUpGoal, Proof>
  let isAlike = true
  for (const goal of lineUpGoals) {
    const { value, bound } = own.proofs[goal]
    const fits = isAlike && known[goal].bound <= value + 1e-6 * Math.max(1, value)
    proofs[goal] = proofOf(value, fits ? Math.max(bound, known[goal].bound) : bound)
    isAlike &&= isSameValue(known[goal].value, value)
  }
  return { plan, proofs }
}
