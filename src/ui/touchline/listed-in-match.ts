import { shortNames } from '#planning/short-names'
import type { MatchPack } from '#touchline/match-pack'
import type { MatchState } from '#touchline/match-state'
import type { ListedPlayer } from '#ui/pitch/register-words'

/** The players in the register's order, those whom the plan does not count on last. */
export function listedInMatch(
  state: Pick<MatchState, 'players' | 'plan' | 'beganAt'>,
  { players: known }: Pick<MatchPack, 'players'>,
): readonly ListedPlayer[] {
  const members = new Set(known.filter(({ isMember }) => isMember).map(({ id }) => id))
  const names = shortNames(state.players.map(({ id, name }) => ({ id, name })))
  const expected = state.plan && new Set(state.plan.players.map(({ playerId }) => playerId))
  const isBegun = state.beganAt !== null
  const listed = state.players.map(
    (player): ListedPlayer => ({
      id: player.id,
      name: names.get(player.id) || 'Guest',
      state: stateOf(player, isBegun),
      isLate: player.segments.some(({ state: how, from }) => how === 'here' && from > 0),
      isGuest: !members.has(player.id),
      isExpected: expected?.has(player.id) ?? true,
    }),
  )
  return [...listed.filter(({ isExpected }) => isExpected), ...listed.filter(({ isExpected }) => !isExpected)]
}

/** Before the kick-off nobody is here whom only the plan counts on. */
function stateOf(
  { isOut, isAssumed, state }: MatchState['players'][number],
  isBegun: boolean,
): ListedPlayer['state'] {
  if (isOut) return 'out'
  return isAssumed && !isBegun ? 'missing' : state
}
