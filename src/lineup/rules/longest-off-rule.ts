import { isPeriodRunning } from '#lineup/period-running'
import type { LineUpRule } from '#lineup/rule'
import { stretchesWhere } from '#lineup/stretches'

/** Nobody who is there is off for longer than so at a stretch inside a period. */
export const longestOffRule: LineUpRule = (problem, plan) => {
  const longest = problem.rules.longestOffSeconds
  if (longest === null) return []
  const isRunning = isPeriodRunning(problem)
  return problem.players.flatMap(({ isThere, running }, player) => {
    const isOff = (window: number) => Boolean(isThere[window]) && !plan[player]?.[window]
    const before = isRunning && running.line === null ? running.seconds : 0
    return stretchesWhere(problem, isOff)
      .filter(({ first, seconds }) => seconds + (first === 0 ? before : 0) > longest)
      .map(({ first }) => ({ rule: 'longestOff' as const, window: first, players: [player] }))
  })
}
