import type { Placed } from '#pitch/changeover'
import type { Deed } from '#pitch/pitch-event'
import type { PitchState } from '#pitch/pitch-state'
import type { UpcomingRound } from '#pitch/upcoming'
import type { PlannedTurn } from '#planning/practice-plan'
import type { Station } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** All turns of a round as they stand, those played already first. */
export function turnsOfRound(turns: readonly PlannedTurn[], round: number): readonly PlannedTurn[] {
  return turns.filter((turn) => turn.round === round)
}

/** The round on the screen is over: of what was left of it, so many balls were played. */
export function roundDone(
  state: Pick<PitchState, 'turns'>,
  { round, turns }: UpcomingRound,
  balls: number,
): Extract<Deed, { kind: 'roundDone' }> {
  const all = turnsOfRound(state.turns, round)
  const before = all.length - turns.length
  return { kind: 'roundDone', round, turns: all.slice(0, before + balls) }
}

/** The same places with two players in each other's; whoever has none waits. */
export function exchanged(stations: readonly Station[], one: PlayerId, other: PlayerId): readonly Station[] {
  const swap = (id: PlayerId) => (id === one ? other : id === other ? one : id)
  return stations.map(({ attack, defend, keep }) => ({
    attack: attack.map(swap),
    defend: defend.map(swap),
    keep: keep.map(swap),
  }))
}

/** The places without a player; `instead` takes its place, null: it stays empty. */
export function withoutPlayer(
  stations: readonly Station[],
  playerId: PlayerId,
  instead: PlayerId | null,
): readonly Station[] {
  const fill = (ids: readonly PlayerId[]) =>
    ids.flatMap((id) => (id !== playerId ? [id] : instead === null ? [] : [instead]))
  return stations.map(({ attack, defend, keep }) => ({
    attack: fill(attack),
    defend: fill(defend),
    keep: fill(keep),
  }))
}

/** The places with somebody more in one of them: who goes in for whoever has just left it. */
export function withPlayerAt(
  stations: readonly Station[],
  place: Pick<Placed, 'station' | 'role'>,
  playerId: PlayerId,
): readonly Station[] {
  return stations.map((at, station) =>
    station === place.station ? { ...at, [place.role]: [...at[place.role], playerId] } : at,
  )
}

/** Two players change places in every turn of a round from one on; `index`: that turn's place in the plan. */
export function swapInRound(
  turns: readonly PlannedTurn[],
  index: number,
  pair: readonly [PlayerId, PlayerId],
): Pick<Extract<Deed, { kind: 'replan' }>, 'fromTurn' | 'turns'> {
  const round = turns[index]?.round
  return {
    fromTurn: index,
    turns: turns
      .slice(index)
      .map((turn) =>
        turn.round === round ? { ...turn, stations: exchanged(turn.stations, ...pair) } : turn,
      ),
  }
}

/** What a rotation says of itself in which two changed places by hand. */
export const swapSentence = 'Two swapped at the pitch.'
