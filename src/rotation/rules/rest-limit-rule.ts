import { restLimitOf } from '#rotation/limits'
import { away, resting } from '#rotation/place'
import type { Rule } from '#rotation/rule'

/**
 * Nobody rests more turns in a row than the limit, those rested before the first turn included; a break for every turn
 * beyond it.
 */
export const restLimitRule: Rule = (problem, plan) => {
  const { restLimit } = problem
  if (restLimit === null) return []
  const runs = problem.players.map(({ restedBefore = 0 }) => restedBefore)
  const limits = problem.players.map((player) => restLimitOf(player, restLimit))
  return plan.flatMap((places, turn) =>
    runs.flatMap((run, player) => {
      const next = (places[player] ?? away) === resting ? run + 1 : 0
      runs[player] = next
      return next > (limits[player] ?? restLimit) ? [{ rule: 'restLimit', turn, players: [player] }] : []
    }),
  )
}
