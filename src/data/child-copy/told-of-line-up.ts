import 'server-only'
import type { MatchPlan } from '#lineup/match-plan'
import type { ChildCopy } from '#rights/child-copy'
import type { PlayerId } from '#squad/player'

type Told = Pick<ChildCopy['matchPlans'][number], 'expected' | 'heldInPlace' | 'times'>

/** A match's plan as far as it is this child's. */
export function toldOfLineUp(plan: MatchPlan, playerId: PlayerId): Told {
  return {
    expected: { ...plan.players.find((one) => one.playerId === playerId) },
    heldInPlace: plan.locks.filter((lock) => lock.playerId === playerId),
    times: plan.spells
      .filter((spell) => spell.playerId === playerId)
      .map(({ line, start, end }) => ({ line, from: start, to: end })),
  }
}
