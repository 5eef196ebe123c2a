import { seatPlace } from '#rotation/place'
import type { Rule, RuleBreak } from '#rotation/rule'

/**
 * In a round whose keepers stay, a station has the keeper of its last turn with a keeper seat for as long as that
 * player is there. Only one who has gone may be followed by another.
 */
export const keepersStayRule: Rule = (problem, plan) => {
  const breaks: RuleBreak[] = []
  const last = new Map<string, number>()
  problem.turns.forEach(({ round, stations }, turn) => {
    if (!problem.rounds[round]?.keepersStay) return
    stations.forEach((seats, station) => {
      if (seats.keep === 0) return
      const keeper = plan[turn]?.indexOf(seatPlace(station, 'keep')) ?? -1
      const before = last.get(`${round} ${station}`)
      if (before !== undefined && before !== keeper && problem.players[before]?.present[turn])
        breaks.push({ rule: 'keepersStay', turn, players: [before, keeper] })
      last.set(`${round} ${station}`, keeper)
    })
  })
  return breaks
}
