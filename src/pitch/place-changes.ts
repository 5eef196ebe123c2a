import { type SeatRole, type Station, seatRoles } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** The places when somebody leaves: `substitute` takes the place over; null: it stays empty. */
export function withSubstitute(
  stations: readonly Station[],
  leaving: PlayerId,
  substitute: PlayerId | null,
): readonly Station[] {
  return replaced(stations, (id) => {
    if (id === leaving) return substitute
    return id === substitute ? null : id
  })
}

/** The places when two exchange theirs; where one of them waits, the other waits instead. */
export function withExchange(
  stations: readonly Station[],
  [one, other]: readonly [PlayerId, PlayerId],
): readonly Station[] {
  return replaced(stations, (id) => (id === one ? other : id === other ? one : id))
}

/** The places in a smaller size of a choice turn, and who steps off: those last in their role. */
export function inSize(
  stations: readonly Station[],
  shape: Readonly<Record<SeatRole, number>>,
): { readonly stations: readonly Station[]; readonly steppingOff: readonly PlayerId[] } {
  return {
    stations: stations.map((station) => ofRoles((role) => station[role].slice(0, shape[role]))),
    steppingOff: stations.flatMap((station) => seatRoles.flatMap((role) => station[role].slice(shape[role]))),
  }
}

function replaced(
  stations: readonly Station[],
  change: (playerId: PlayerId) => PlayerId | null,
): readonly Station[] {
  return stations.map((station) => ofRoles((role) => station[role].flatMap((id) => change(id) ?? [])))
}

function ofRoles(playersOf: (role: SeatRole) => readonly PlayerId[]): Station {
  return { attack: playersOf('attack'), defend: playersOf('defend'), keep: playersOf('keep') }
}
