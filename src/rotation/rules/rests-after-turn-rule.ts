import { resting } from '#rotation/place'
import type { Rule } from '#rotation/rule'

/** Whoever waits after each turn has no place in the turn after one with a place. */
export const restsAfterTurnRule: Rule = (problem, plan) =>
  plan.flatMap((places, turn) =>
    problem.players.flatMap(({ restsAfterTurn }, player) => {
      const before = plan[turn - 1]?.[player] ?? resting
      if (!restsAfterTurn || before <= resting || (places[player] ?? resting) <= resting) return []
      return [{ rule: 'restsAfterTurn', turn, players: [player] }]
    }),
  )
