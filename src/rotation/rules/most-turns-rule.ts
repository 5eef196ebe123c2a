import { resting } from '#rotation/place'
import type { Rule } from '#rotation/rule'

/** Nobody has more turns with a place than it agreed to; a break for every turn beyond them. */
export const mostTurnsRule: Rule = (problem, plan) => {
  const had = problem.players.map(() => 0)
  return plan.flatMap((places, turn) =>
    problem.players.flatMap(({ mostTurns }, player) => {
      if (mostTurns == null || (places[player] ?? resting) <= resting) return []
      had[player] = (had[player] ?? 0) + 1
      return (had[player] ?? 0) > mostTurns ? [{ rule: 'mostTurns', turn, players: [player] }] : []
    }),
  )
}
