import { placesInAll } from '#lineup/places-for'
import { placesAsTaken } from '#lineup/tail-problem'
import { type Line, lines } from '#match/match'
import { isAble } from '#touchline/is-able'
import type { PlacedPlayer } from '#touchline/match-deed'
import type { MatchPack } from '#touchline/match-pack'
import { matchPromises } from '#touchline/match-promises'
import type { MatchPlayer, MatchState } from '#touchline/match-state'

/** Who comes on at once, and who is on then: the body of a `places` deed. */
export type FilledPlaces = {
  readonly comesOn: readonly PlacedPlayer[]
  readonly on: readonly PlacedPlayer[]
}

/**
 * Who comes on at once where places are empty: of those able to play there, the one who lacks most of what it was
 * promised, then who is due most, then who was off longest. Where nobody who is off keeps goal, one who is on goes there,
 * and its place is filled. Null: nothing to fill, or nobody to fill it.
 */
export function fillPlace(state: MatchState, pack: Pick<MatchPack, 'policy'>): FilledPlaces | null {
  if (state.emptyPlaces === 0) return null
  const promised = new Map(matchPromises(state, pack).map(({ playerId, least }) => [playerId, least]))
  const owed = new Map((state.plan?.players ?? []).map((player) => [player.playerId, player]))
  const rank = (player: MatchPlayer) => [
    Math.max(0, (promised.get(player.id) ?? 0) - player.seconds),
    (owed.get(player.id)?.owed.playSeconds ?? 0) + player.secondsThere - player.seconds,
    state.second - player.placedSince,
  ]
  const isApart = (player: MatchPlayer, on: readonly PlacedPlayer[]) =>
    (state.plan?.apart ?? []).some(([one, other]) => {
      const partner = one === player.id ? other : other === player.id ? one : null
      return partner !== null && on.some(({ playerId }) => playerId === partner)
    })
  const mayReturn = state.plan?.rules.mayReturn ?? state.format.mayReturn
  let waiting = state.players
    .filter((player) => isAble(player) && player.line === null)
    .filter((player) => mayReturn || !player.hasComeOff)
    .sort((one, other) => firstDifference(rank(other), rank(one)))
  let on = state.on
  const comesOn: PlacedPlayer[] = []
  const put = (player: MatchPlayer, line: Line) => {
    waiting = waiting.filter(({ id }) => id !== player.id)
    comesOn.push({ playerId: player.id, line })
    on = [...on, { playerId: player.id, line }]
  }
  while (on.length < placesInAll(state.places)) {
    const line = freeLine(state, on)
    const free = waiting.filter((player) => !isApart(player, on))
    if (line === 'keeper') {
      const keeper = free.find(({ keeps }) => keeps)
      const moves = keeper
        ? null
        : on.find(({ playerId }) => state.players.some(({ id, keeps }) => id === playerId && keeps))
      if (moves) {
        on = on.map((one): PlacedPlayer => (one === moves ? { ...one, line: 'keeper' } : one))
        continue
      }
      const comes = keeper ?? free[0]
      if (!comes) break
      put(comes, 'keeper')
      continue
    }
    const comes = free.find((player) => owed.get(player.id)?.wishes[line] !== 'notYet') ?? free[0]
    if (!comes) break
    put(comes, line)
  }
  return comesOn.length === 0 && on === state.on ? null : { comesOn, on }
}

function freeLine({ places }: MatchState, on: readonly PlacedPlayer[]): Line {
  const taken = placesAsTaken(on, places)
  return lines.find((line) => on.filter((one) => one.line === line).length < taken[line]) ?? 'middle'
}

function firstDifference(one: readonly number[], other: readonly number[]): number {
  for (const [index, value] of one.entries()) if (value !== other[index]) return value - (other[index] ?? 0)
  return 0
}
