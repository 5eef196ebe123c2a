import type { LineUpRule } from '#lineup/rule'

/** Only who may keep goal is in goal. */
export const keeperRule: LineUpRule = (problem, plan) =>
  problem.players.flatMap(({ keeps }, player) =>
    problem.windows.flatMap((_, window) =>
      !keeps && plan[player]?.[window] === 'keeper'
        ? [{ rule: 'keeper' as const, window, players: [player] }]
        : [],
    ),
  )
