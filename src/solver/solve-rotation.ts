import { seededChance } from '#common/chance'
import { InvariantError } from '#common/result'
import { anneal, goals } from '#rotation/anneal'
import { layOut, planOf } from '#rotation/board'
import { checkPlan } from '#rotation/check-plan'
import { firstPlan } from '#rotation/first-plan'
import { mayTakeIn } from '#rotation/may-take'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import { leastRestByCounting } from '#rotation/rest-bound'
import { proofOf, type Rotation } from '#rotation/rotation'
import { settle } from '#rotation/settle'
import { setDeadline } from '#solver/deadline'

export type SolveSettings = {
  readonly seed: number
  readonly timeLimitMs: number
  readonly workLimit: number | null
  readonly began: number
}

export async function solveRotation(problem: RotationProblem, settings: SolveSettings): Promise<Rotation> {
  const deadline = setDeadline(settings)
  const asked = problem.restLimit
  const least = asked === null ? null : leastRestByCounting(problem, asked)
  const mayTake = mayTakeIn(problem)
  for (let limit = least; ; limit = limit === null ? null : limit + 1) {
    const plan = firstPlan(problem, mayTake, { waitingWeight: 0.5, restLimit: limit })
    if (plan === null) throw new InvariantError('A turn that can be seated was not.')
    const board = layOut(problem, plan)
    for (const goal of goals)
      anneal(board, {
        goal,
        restLimit: limit,
        chance: seededChance(settings.seed),
        tries: 100_000,
        mayGoOn: () => deadline.leftMs() > 0,
      })
    settle(board, limit)
    const found = planOf(board)
    if (checkPlan({ ...problem, restLimit: limit }, found).length > 0) continue
    const values = planValues(problem, found)
    return {
      plan: found,
      values,
      restLimit: {
        asked,
        used: limit,
        leastPossible: limit,
        proven: limit === least,
        price: null,
        priceAtMost: null,
      },
      unfairness: proofOf(values.unfairness, 0),
      situationUnfairness: proofOf(values.situationUnfairness, 0),
      mixing: proofOf(values.mixing, 0),
    }
  }
}
