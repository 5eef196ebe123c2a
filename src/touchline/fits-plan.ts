import type { MatchState } from '#touchline/match-state'

/**
 * Whether the plan counts on just those who are there. Of the first kick-off: a planned player who is not there, or
 * somebody there whom it does not know, asks for a new plan; later only what changes does.
 */
export function fitsFirstKickOff({ plan, players }: Pick<MatchState, 'plan' | 'players'>): boolean {
  if (!plan) return false
  const from = new Map(plan.players.map((player) => [player.playerId, player.from]))
  return players.every(({ id, state, sentOff, expectedFrom }) => {
    const isAble = state === 'here' && sentOff === null
    const planned = from.get(id)
    if (planned === undefined) return !isAble
    return planned === 0 ? isAble : isAble || expectedFrom !== null || state === 'missing'
  })
}

/** Somebody can play now who could not before, or the other way round. */
export function isCastNew(before: Pick<MatchState, 'players'>, after: Pick<MatchState, 'players'>): boolean {
  const able = ({ players }: Pick<MatchState, 'players'>) =>
    players
      .filter(({ state, sentOff }) => state === 'here' && sentOff === null)
      .map(({ id }) => id)
      .sort()
      .join()
  return able(before) !== able(after)
}
