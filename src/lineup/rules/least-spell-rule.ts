import { isPeriodRunning } from '#lineup/period-running'
import type { LineUpRule } from '#lineup/rule'
import { stretchesWhere, windowAfter } from '#lineup/stretches'

/**
 * Who comes on, or begins a period, plays so long before it comes off inside the period. Time that ends because the
 * player leaves, or with the period, may be shorter.
 */
export const leastSpellRule: LineUpRule = (problem, plan) => {
  const least = problem.rules.leastSpellSeconds
  if (least <= 0) return []
  const isRunning = isPeriodRunning(problem)
  return problem.players.flatMap(({ isThere, running }, player) => {
    const isOnAlready = isRunning && running.line !== null
    const breaks = (window: number) => ({ rule: 'leastSpell' as const, window, players: [player] })
    const cutAtOnce =
      isOnAlready && isThere[0] && !plan[player]?.[0] && running.seconds < least ? [breaks(0)] : []
    const cutLater = stretchesWhere(problem, (window) => Boolean(plan[player]?.[window])).filter(
      (stretch) => {
        const after = windowAfter(problem, stretch)
        const before = stretch.first === 0 && isOnAlready ? running.seconds : 0
        return after !== null && isThere[after] && stretch.seconds + before < least
      },
    )
    return [...cutAtOnce, ...cutLater.map(({ first }) => breaks(first))]
  })
}
