import type { LineUpRule } from '#lineup/rule'

/** A place that is held is as it is held. */
export const fixedRule: LineUpRule = (problem, plan) =>
  problem.fixed.flatMap(({ player, window, place }) => {
    const own = plan[player]?.[window] ?? null
    const isAsHeld = place === 'on' ? own !== null : place === 'off' ? own === null : own === place
    return isAsHeld ? [] : [{ rule: 'fixed' as const, window, players: [player] }]
  })
