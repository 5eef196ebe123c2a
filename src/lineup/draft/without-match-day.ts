import { lineUpGoals } from '#lineup/line-up'
import type { MatchPlan } from '#lineup/match-plan'
import { fieldLines, noWishes } from '#match/format/line-wish'

/**
 * A plan once its match is over: who was to be on when, and nothing of what was set for that day alone or noted of single
 * players: pairs, places held fast, lines. What was proven around that is not said any more.
 */
export function withoutMatchDay(plan: MatchPlan): MatchPlan {
  const { mayMeet = [], ...kept } = plan
  const isPlain =
    plan.apart.length + plan.together.length + plan.locks.length + mayMeet.length === 0 &&
    plan.players.every(({ wishes }) => fieldLines.every((line) => wishes[line] === 'open'))
  if (isPlain) return plan
  const goals = { ...plan.proof.goals }
  for (const goal of lineUpGoals) goals[goal] = { ...goals[goal], bound: 0, proven: false }
  return {
    ...kept,
    players: plan.players.map((player) => ({ ...player, wishes: noWishes })),
    ...{ apart: [], together: [], locks: [] },
    proof: { sentence: 'A plan of a match that is over.', goals },
  }
}
