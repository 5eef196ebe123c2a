import { isPeriodRunning } from '#lineup/period-running'
import type { LineUpRule } from '#lineup/rule'

/** Who is in goal stays there until the period ends, as long as it is there and there is a goal to keep. */
export const keeperForPeriodRule: LineUpRule = (problem, plan) => {
  if (!problem.rules.keeperForPeriod) return []
  const isRunning = isPeriodRunning(problem)
  return problem.windows.flatMap((window, index) =>
    problem.players.flatMap(({ isThere, running }, player) => {
      const before = problem.windows[index - 1]
      const kept = before
        ? before.period === window.period && plan[player]?.[index - 1] === 'keeper'
        : isRunning && running.line === 'keeper'
      const mustStay = kept && isThere[index] && window.places.keeper > 0
      return mustStay && plan[player]?.[index] !== 'keeper'
        ? [{ rule: 'keeperForPeriod' as const, window: index, players: [player] }]
        : []
    }),
  )
}
