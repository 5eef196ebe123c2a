import type { LineUpRule } from '#lineup/rule'

/** No more players come on in the match than are allowed, at breaks too; who begins it has not come on. */
export const mostSubstitutionsRule: LineUpRule = (problem, plan) => {
  const most = problem.rules.mostSubstitutions
  if (most === null) return []
  const comings = problem.windows.flatMap((_, window) =>
    problem.players.flatMap(({ running }, player) => {
      const wasOn =
        window > 0 ? Boolean(plan[player]?.[window - 1]) : problem.hasStart || running.line !== null
      return plan[player]?.[window] && !wasOn ? [{ window, player }] : []
    }),
  )
  return comings.slice(most).map(({ window, player }) => ({
    rule: 'mostSubstitutions' as const,
    window,
    players: [player],
  }))
}
