import type { Situation } from '#exposure/column'
import { situationsAt } from '#exposure/situation'
import { type SeatRole, type StationSeats, seatRoles } from '#rotation/problem'

/**
 * Where a player is in a turn, as one number, because plans are compared and changed by the million: away, resting, or
 * a seat: 1 + 3 × station + role (attack 0, defend 1, keep 2). Seats of one role at one station are alike.
 */
export const away = -1
export const resting = 0

export function seatPlace(station: number, role: SeatRole): number {
  return 1 + 3 * station + seatRoles.indexOf(role)
}

export function stationOf(place: number): number {
  return Math.floor((place - 1) / 3)
}

/** Attack 0, defend 1, keep 2, rest 3; for a place that is not away. */
export function roleIndexOf(place: number): number {
  return place === resting ? 3 : (place - 1) % 3
}

export function roleOf(place: number): SeatRole | 'rest' {
  return place === resting ? 'rest' : (seatRoles[(place - 1) % 3] ?? 'rest')
}

/** The situation that a place at one of these stations brings; null for keep, rest, away and a lone side. */
export function situationOf(stations: readonly StationSeats[], place: number): Situation | null {
  if (place <= resting) return null
  const role = roleOf(place)
  const seats = stations[stationOf(place)]
  if (!seats || role === 'keep' || role === 'rest') return null
  return situationsAt({ attackers: seats.attack, defenders: seats.defend })[role]
}
