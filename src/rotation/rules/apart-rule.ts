import { resting, stationOf } from '#rotation/place'
import type { Rule } from '#rotation/rule'

/** Two who are kept apart are never at one station in one turn, whatever their roles. */
export const apartRule: Rule = (problem, plan) =>
  plan.flatMap((places, turn) =>
    problem.apart.flatMap(([one, other]) => {
      const [first = 0, second = 0] = [places[one], places[other]]
      if (first <= resting || second <= resting || stationOf(first) !== stationOf(second)) return []
      return [{ rule: 'apart', turn, players: [one, other] }]
    }),
  )
