import type { LineUpRule } from '#lineup/rule'
import { lines } from '#match/match'

/** In every window each line has as many as it has places, no more and no fewer. */
export const placesRule: LineUpRule = (problem, plan) =>
  problem.windows.flatMap(({ places }, window) =>
    lines.flatMap((line) => {
      const there = plan.flatMap((own, player) => (own[window] === line ? [player] : []))
      return there.length === places[line] ? [] : [{ rule: 'places' as const, window, players: there }]
    }),
  )
