import { isPeriodRunning } from '#lineup/period-running'
import type { LineUpRule } from '#lineup/rule'
import { stretchesWhere } from '#lineup/stretches'

/** Nobody is on out of goal for longer than so without a change inside a period. */
export const longestSpellRule: LineUpRule = (problem, plan) => {
  const longest = problem.rules.longestSpellSeconds
  if (longest === null) return []
  const isRunning = isPeriodRunning(problem)
  return problem.players.flatMap(({ running }, player) => {
    const isOnField = (window: number) => {
      const place = plan[player]?.[window] ?? null
      return place !== null && place !== 'keeper'
    }
    const before = isRunning && running.line !== null && running.line !== 'keeper' ? running.seconds : 0
    return stretchesWhere(problem, isOnField)
      .filter(({ first, seconds }) => seconds + (first === 0 ? before : 0) > longest)
      .map(({ first }) => ({ rule: 'longestSpell' as const, window: first, players: [player] }))
  })
}
