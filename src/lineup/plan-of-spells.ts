import type { LineUpPlan } from '#lineup/line-up'
import type { MatchPlanRequest, PlannedSpell } from '#lineup/match-plan'
import { windowsOfMatch } from '#lineup/problem-of-match'
import type { Line } from '#match/match'

/**
 * Stored spells as places in the windows of their request. Null where a spell begins or ends between the windows' ends,
 * names somebody who is not asked for, or lies over another of the same player: then it is no plan of this request.
 */
export function planOfSpells(
  request: Pick<MatchPlanRequest, 'format' | 'marks' | 'places' | 'players'>,
  spells: readonly PlannedSpell[],
): LineUpPlan | null {
  const windows = windowsOfMatch(request)
  const places: (Line | null)[][] = request.players.map(() => windows.map(() => null))
  const rowOf = new Map(request.players.map(({ playerId }, index) => [playerId, places[index]]))
  for (const { playerId, line, start, end } of spells) {
    const row = rowOf.get(playerId)
    const first = windows.findIndex((window) => window.start === start)
    const last = windows.findIndex((window) => window.end === end)
    if (!row || first < 0 || last < first) return null
    for (let window = first; window <= last; window += 1) {
      if (row[window] !== null) return null
      row[window] = line
    }
  }
  return places
}
