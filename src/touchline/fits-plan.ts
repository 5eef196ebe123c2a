import { isAble } from '#touchline/is-able'
import type { MatchState } from '#touchline/match-state'

/**
 * Whether the plan counts on just those who are there. Of the first kick-off: a planned player who is not there, or
 * somebody there whom it does not know, asks for a new plan; later only what changes does.
 */
export function fitsFirstKickOff({ plan, players }: Pick<MatchState, 'plan' | 'players'>): boolean {
  if (!plan) return false
  const from = new Map(plan.players.map((player) => [player.playerId, player.from]))
  return players.every((player) => {
    const planned = from.get(player.id)
    if (planned === undefined || planned === 0) return isAble(player) === (planned === 0)
    return isAble(player) || player.expectedFrom !== null || player.state === 'missing'
  })
}

/** Somebody can play now who could not before, or the other way round. */
export function isCastNew(before: Pick<MatchState, 'players'>, after: Pick<MatchState, 'players'>): boolean {
  const able = ({ players }: Pick<MatchState, 'players'>) =>
    players
      .filter(isAble)
      .map(({ id }) => id)
      .sort()
      .join()
  return able(before) !== able(after)
}
