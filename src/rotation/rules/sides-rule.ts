import { resting, roleOf } from '#rotation/place'
import type { Rule } from '#rotation/rule'

/** In a round with sides only the one side attacks and only the other defends; keeping and resting are open to all. */
export const sidesRule: Rule = (problem, plan) =>
  plan.flatMap((places, turn) => {
    const sides = problem.rounds[problem.turns[turn]?.round ?? -1]?.sides
    if (!sides) return []
    return places.flatMap((place, player) => {
      const role = place > resting ? roleOf(place) : 'rest'
      if (role !== 'attack' && role !== 'defend') return []
      return sides[role].includes(player) ? [] : [{ rule: 'sides', turn, players: [player] }]
    })
  })
