import { secondsOf } from '#lineup/line-up-values'
import type { LineUpRule } from '#lineup/rule'

/** Nobody plays longer than it may. */
export const mostSecondsRule: LineUpRule = (problem, plan) =>
  problem.players.flatMap(({ mostSeconds }, player) =>
    mostSeconds !== null && secondsOf(problem, plan[player]) > mostSeconds
      ? [{ rule: 'mostSeconds' as const, window: 0, players: [player] }]
      : [],
  )
