import { away, resting, roleOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'

/** How often a pair that should be together is. */
export type TogetherTurns = {
  readonly pair: readonly [number, number]
  /** Turns on one side of one area. */
  readonly turns: number
  /** Turns in which both are there. */
  readonly of: number
}

/** For each pair wished together, what the plan makes of the wish. */
export function togetherTurns(problem: RotationProblem, plan: RotationPlan): readonly TogetherTurns[] {
  return (problem.together ?? []).map((pair) => {
    const places = plan.map((own) => pair.map((player) => own[player] ?? away) as [number, number])
    const both = places.filter(([one, other]) => one !== away && other !== away)
    const turns = both.filter(([one, other]) => one > resting && one === other && roleOf(one) !== 'keep')
    return { pair, turns: turns.length, of: both.length }
  })
}
