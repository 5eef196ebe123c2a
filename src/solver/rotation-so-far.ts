import { proofOf } from '#common/proof'
import { layOut, planOf } from '#rotation/board'
import { mixingBound } from '#rotation/mixing-bound'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import type { Rotation } from '#rotation/rotation'
import { settle } from '#rotation/settle'
import { situationBound } from '#rotation/situation-bound'
import type { SolveProgress } from '#solver/solve-progress'

/** A rotation out of a search that was stopped: its best plan, with the exchanges in one turn that still help. */
export function rotationSoFar(problem: RotationProblem, best: SolveProgress): Rotation {
  const board = layOut(problem, best.plan)
  settle(board, best.restLimitUsed)
  const plan = planOf(board)
  const values = planValues(problem, plan)
  return {
    plan,
    values,
    restLimit: {
      asked: problem.restLimit,
      used: best.restLimitUsed,
      leastPossible: best.restLimitUsed,
      proven: best.restLimitUsed === problem.restLimit,
      price: null,
      priceAtMost: null,
    },
    unfairness: proofOf(values.unfairness, best.bound),
    situationUnfairness: proofOf(values.situationUnfairness, situationBound(problem)),
    mixing: proofOf(values.mixing, mixingBound(problem)),
  }
}
