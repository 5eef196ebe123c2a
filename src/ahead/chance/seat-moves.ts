import { restPlace, seatPlaces } from '#ahead/chance/seat-places'

/** More of one seat column for a player: instead of another, or instead of waiting. */
export type SeatMove = {
  readonly more: number
  /** −1: waiting. */
  readonly less: number
  /** Columns that it changes, and by how much for each second of it. */
  readonly changes: readonly { readonly place: number; readonly by: number }[]
}

/** Every move between the seat columns of a practice: first those instead of waiting. */
export function seatMoves(columns: readonly number[]): readonly SeatMove[] {
  return [
    ...columns.map((more) => seatMove(more)),
    ...columns.flatMap((more, at) => columns.slice(at + 1).map((less) => seatMove(more, less))),
  ]
}

/** One move; without another column, instead of waiting. */
export function seatMove(more: number, less = -1): SeatMove {
  const by = new Map<number, number>()
  const add = (place: number, seconds: number) => by.set(place, (by.get(place) ?? 0) + seconds)
  for (const place of placesOf(more)) add(place, 1)
  for (const place of placesOf(less)) add(place, -1)
  return { more, less, changes: [...by].flatMap(([place, own]) => (own === 0 ? [] : [{ place, by: own }])) }
}

function placesOf(seat: number): readonly number[] {
  const places = seatPlaces[seat]
  if (!places) return [restPlace]
  return places.situation < 0 ? [places.role] : [places.role, places.situation]
}
