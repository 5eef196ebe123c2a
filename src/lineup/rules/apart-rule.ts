import type { LineUpRule } from '#lineup/rule'

/** Two who are kept apart are never on at the same time. */
export const apartRule: LineUpRule = (problem, plan) =>
  problem.apart.flatMap(([one, other]) =>
    problem.windows.flatMap((_, window) =>
      plan[one]?.[window] && plan[other]?.[window]
        ? [{ rule: 'apart' as const, window, players: [one, other] }]
        : [],
    ),
  )
