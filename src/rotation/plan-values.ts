import { situations } from '#exposure/column'
import { addPlaceSeconds, fairSeconds, noSeconds } from '#rotation/fair-seconds'
import { away, resting, roleIndexOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import {
  type ColumnSeconds,
  type RotationColumn,
  type RotationProblem,
  rotationColumns,
  seatRoles,
} from '#rotation/problem'

export type PlayerFigures = {
  readonly seconds: ColumnSeconds
  readonly fairSeconds: ColumnSeconds
  readonly gapAfter: ColumnSeconds
}

/** The goals of a rotation in their order, the less the better. */
export type PlanValues = {
  /** Seconds²: over players and the four roles, the sum of (gap afterwards)². */
  readonly unfairness: number
  /** The same over the three situations. */
  readonly situationUnfairness: number
  /** Changes of role from a turn to the very next inside a round; coming on and going off are none. */
  readonly roleChanges: number
  /** Over pairs, the sum of (times on one side of one station in one turn)². */
  readonly mixing: number
}

/** What each player gets and is due by a plan, and the gap that is left. */
export function playerFigures(problem: RotationProblem, plan: RotationPlan): readonly PlayerFigures[] {
  const due = fairSeconds(problem)
  return problem.players.map((player, index) => {
    const seconds = { ...noSeconds }
    problem.turns.forEach((turn, at) => {
      addPlaceSeconds(seconds, turn, plan[at]?.[index] ?? away)
    })
    const fair = due[index] ?? noSeconds
    const gapAfter: Record<RotationColumn, number> = { ...noSeconds }
    for (const column of rotationColumns)
      gapAfter[column] = player.gap[column] + seconds[column] - fair[column]
    return { seconds, fairSeconds: fair, gapAfter }
  })
}

const roleColumns = [...seatRoles, 'rest'] as const

export function planValues(problem: RotationProblem, plan: RotationPlan): PlanValues {
  const figures = playerFigures(problem, plan)
  const squares = (columns: readonly RotationColumn[]) =>
    figures.reduce(
      (sum, { gapAfter }) => columns.reduce((own, column) => own + gapAfter[column] ** 2, sum),
      0,
    )
  return {
    unfairness: squares(roleColumns),
    situationUnfairness: squares(situations),
    roleChanges: roleChanges(problem, plan),
    mixing: mixing(problem, plan),
  }
}

export function roleChanges(problem: RotationProblem, plan: RotationPlan): number {
  let changes = 0
  problem.turns.forEach(({ round }, turn) => {
    if (problem.turns[turn - 1]?.round !== round) return
    plan[turn]?.forEach((place, player) => {
      const before = plan[turn - 1]?.[player] ?? away
      if (place > resting && before > resting && roleIndexOf(place) !== roleIndexOf(before)) changes += 1
    })
  })
  return changes
}

export function mixing(problem: RotationProblem, plan: RotationPlan): number {
  let total = 0
  for (const one of problem.players.keys()) {
    for (let other = one + 1; other < problem.players.length; other += 1) {
      const times = plan.filter((places) => {
        const place = places[one] ?? away
        return place > resting && place === places[other] && roleIndexOf(place) !== 2
      }).length
      total += times ** 2
    }
  }
  return total
}
