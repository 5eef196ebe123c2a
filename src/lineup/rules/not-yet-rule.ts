import type { LineUpRule } from '#lineup/rule'

/** Nobody is put into a line that it does not play yet. */
export const notYetRule: LineUpRule = (problem, plan) =>
  problem.players.flatMap(({ wishes }, player) =>
    problem.windows.flatMap((_, window) => {
      const place = plan[player]?.[window] ?? null
      return place !== null && place !== 'keeper' && wishes[place] === 'notYet'
        ? [{ rule: 'notYet' as const, window, players: [player] }]
        : []
    }),
  )
