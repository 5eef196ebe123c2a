import type { SeatPlace } from '#practice/checks/practice-fault'
import { seatRoles, type Turn } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** Every seat of a turn with who sits there, station by station. */
export function seatsOfTurn(turn: Pick<Turn, 'stations'>): readonly (SeatPlace & { playerId: PlayerId })[] {
  return turn.stations.flatMap((at, station) =>
    seatRoles.flatMap((role) => at[role].map((playerId, place) => ({ station, role, place, playerId }))),
  )
}
