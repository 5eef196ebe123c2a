import { changesInside } from '#lineup/line-up-values'
import type { LineUpRule } from '#lineup/rule'

/** Inside periods no more players come on than the coach will bear. */
export const mostChangesRule: LineUpRule = (problem, plan) => {
  const most = problem.rules.mostChanges
  return most !== null && changesInside(problem, plan) > most
    ? [{ rule: 'mostChanges', window: 0, players: [] }]
    : []
}
