import type { Role } from '#exposure/column'
import { roles } from '#exposure/column'
import type { PlanRequest } from '#planning/practice-plan'
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

/** What a plan does to everyone's balance. The whole of a gap counts, also where only a part of it is to be closed today. */
export function planBalance(
  problem: RotationProblem,
  of: { readonly plan: RotationPlan; readonly request: PlanRequest },
): readonly PlannedBalance[] {
  const { plan, request } = of
  const figures = playerFigures(problem, plan)
  // Turns that all last one second are due as turns.
  const dueTurns = fairSeconds({
    ...problem,
    turns: problem.turns.map((turn) => ({ ...turn, seconds: 1 })),
  })
  return request.players.map(({ playerId, gap }, player) => {
    const turnsAs = (role: Role) =>
      plan.filter((places) => {
        const place = places[player] ?? away
        return place !== away && roleOf(place) === role
      }).length
    const figureOf = (role: Role): PlannedFigure => {
      const seconds = figures[player]?.seconds[role] ?? 0
      const dueSeconds = figures[player]?.fairSeconds[role] ?? 0
      return {
        before: gap[role],
        after: gap[role] + seconds - dueSeconds,
        seconds,
        dueSeconds,
        turns: turnsAs(role),
        dueTurns: dueTurns[player]?.[role] ?? 0,
      }
    }
    return {
      playerId,
      roles: Object.fromEntries(roles.map((role) => [role, figureOf(role)])) as PlannedBalance['roles'],
    }
  })
}
