import type { LineUpRule } from '#lineup/rule'

/** Where nobody may come back, who came off stays off; at a break too. */
export const mayReturnRule: LineUpRule = (problem, plan) => {
  if (problem.rules.mayReturn) return []
  return problem.players.flatMap(({ running }, player) => {
    let wasOn = running.line !== null
    let hasComeOff = running.hasComeOff
    return problem.windows.flatMap((_, window) => {
      const isOn = Boolean(plan[player]?.[window])
      hasComeOff ||= wasOn && !isOn
      wasOn = isOn
      return isOn && hasComeOff ? [{ rule: 'mayReturn' as const, window, players: [player] }] : []
    })
  })
}
