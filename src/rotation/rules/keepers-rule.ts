import { resting, roleOf } from '#rotation/place'
import type { Rule } from '#rotation/rule'

/** Only those who may keep goal do. */
export const keepersRule: Rule = (problem, plan) =>
  plan.flatMap((places, turn) =>
    places.flatMap((place, player) =>
      place > resting && roleOf(place) === 'keep' && !problem.players[player]?.keeps
        ? [{ rule: 'keepers', turn, players: [player] }]
        : [],
    ),
  )
