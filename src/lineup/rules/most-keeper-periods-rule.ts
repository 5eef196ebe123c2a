import { isPeriodRunning } from '#lineup/period-running'
import type { LineUpRule } from '#lineup/rule'

/** Nobody keeps goal in more periods than are allowed, those before this plan counted. Staying in one that runs begins none. */
export const mostKeeperPeriodsRule: LineUpRule = (problem, plan) => {
  const most = problem.rules.mostKeeperPeriods
  if (most === null) return []
  const isRunning = isPeriodRunning(problem)
  return problem.players.flatMap(({ running }, player) => {
    const keepsNow = isRunning && running.line === 'keeper'
    const runningPeriod = keepsNow ? problem.windows[0]?.period : undefined
    const begun = new Map<number, number>()
    for (const [index, { period }] of problem.windows.entries()) {
      if (plan[player]?.[index] !== 'keeper' || period === runningPeriod || begun.has(period)) continue
      begun.set(period, index)
    }
    const left = Math.max(0, most - running.periodsKept - (keepsNow ? 1 : 0))
    return [...begun.values()]
      .slice(left)
      .map((window) => ({ rule: 'mostKeeperPeriods' as const, window, players: [player] }))
  })
}
