import type { LineUpRule } from '#lineup/rule'

/** Nobody is on who is not there for the whole window. */
export const presenceRule: LineUpRule = (problem, plan) =>
  problem.players.flatMap(({ isThere }, player) =>
    problem.windows.flatMap((_, window) =>
      plan[player]?.[window] && !isThere[window]
        ? [{ rule: 'presence' as const, window, players: [player] }]
        : [],
    ),
  )
