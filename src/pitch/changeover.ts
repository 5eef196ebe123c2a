import { type SeatRole, type Station, seatRoles } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** Where somebody is placed; areas from 0. */
export type Placed = { readonly playerId: PlayerId; readonly station: number; readonly role: SeatRole }

/** What changes from one turn to the next. */
export type Changeover = {
  readonly on: readonly Placed[]
  readonly off: readonly PlayerId[]
  /** Who goes on playing, in another role or area. */
  readonly moved: readonly (Placed & { readonly from: Omit<Placed, 'playerId'> })[]
}

/** Everyone with a place, area by area, attackers first. */
export function placedIn(stations: readonly Station[]): readonly Placed[] {
  return stations.flatMap((at, station) =>
    seatRoles.flatMap((role) => at[role].map((playerId) => ({ playerId, station, role }))),
  )
}

/** Who comes on, who steps off and who changes place between two turns; before the first turn nobody is on. */
export function changeover(before: readonly Station[], after: readonly Station[]): Changeover {
  const placesBefore = new Map(placedIn(before).map((placed) => [placed.playerId, placed]))
  const placesAfter = placedIn(after)
  const stay = new Set(placesAfter.map(({ playerId }) => playerId))
  return {
    on: placesAfter.filter(({ playerId }) => !placesBefore.has(playerId)),
    off: [...placesBefore.keys()].filter((playerId) => !stay.has(playerId)),
    moved: placesAfter.flatMap((placed) => {
      const from = placesBefore.get(placed.playerId)
      if (!from || (from.station === placed.station && from.role === placed.role)) return []
      return [{ ...placed, from: { station: from.station, role: from.role } }]
    }),
  }
}
