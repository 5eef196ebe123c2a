import type { Role } from '#exposure/column'
import { roles } from '#exposure/column'
import { fairSeconds } from '#rotation/fair-seconds'
import { away, roleOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import { playerFigures } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import type { PlayerId } from '#squad/player'

/** A player's figure in one role: carried in, got and due in this practice, and what is left of it afterwards. */
export type PlannedFigure = {
  /** Share − even share, in seconds, before this practice and after it. */
  readonly before: number
  readonly after: number
  readonly seconds: number
  readonly dueSeconds: number
  /** Turns: children count goes. */
  readonly turns: number
  readonly dueTurns: number
}

export type PlannedBalance = {
  readonly playerId: PlayerId
  readonly roles: Readonly<Record<Role, PlannedFigure>>
}

/** What a plan does to everyone's balance. */
export function planBalance(problem: RotationProblem, plan: RotationPlan): readonly PlannedBalance[] {
  const figures = playerFigures(problem, plan)
  // Turns that all last one second are due as turns.
  const dueTurns = fairSeconds({
    ...problem,
    turns: problem.turns.map((turn) => ({ ...turn, seconds: 1 })),
  })
  return problem.players.map(({ id, gap }, player) => {
    const turnsAs = (role: Role) =>
      plan.filter((places) => {
        const place = places[player] ?? away
        return place !== away && roleOf(place) === role
      }).length
    const figureOf = (role: Role): PlannedFigure => ({
      before: gap[role],
      after: figures[player]?.gapAfter[role] ?? 0,
      seconds: figures[player]?.seconds[role] ?? 0,
      dueSeconds: figures[player]?.fairSeconds[role] ?? 0,
      turns: turnsAs(role),
      dueTurns: dueTurns[player]?.[role] ?? 0,
    })
    return {
      playerId: id,
      roles: Object.fromEntries(roles.map((role) => [role, figureOf(role)])) as PlannedBalance['roles'],
    }
  })
}
