import { away } from '#rotation/place'
import type { Rule } from '#rotation/rule'

/** Whoever is there has a place, seat or rest, and whoever is not has none. */
export const presenceRule: Rule = (problem, plan) =>
  problem.turns.flatMap((_, turn) =>
    problem.players.flatMap((player, index) =>
      ((plan[turn]?.[index] ?? away) !== away) === player.present[turn]
        ? []
        : [{ rule: 'presence', turn, players: [index] }],
    ),
  )
