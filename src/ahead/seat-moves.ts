import { seatColumns } from '#ahead/seat-column'
import { restPlace, seatPlaces } from '#ahead/seat-places'

/** More of one seat column for a player: instead of another, or instead of waiting. */
export type SeatMove = {
  readonly more: number
  /** −1: waiting. */
  readonly less: number
  /** Columns that it changes, and by how much for each second of it: those that rise, then those that fall. */
  readonly changes: readonly { readonly place: number; readonly by: 1 | -1 }[]
}

/** By seat column, more of it instead of waiting. */
const waitMoves: readonly SeatMove[] = seatColumns.map((_, more) => seatMove(more, -1))

/** Every kind of move once, those instead of waiting first: the other way round it is what somebody else does. */
export const seatMoves: readonly SeatMove[] = [
  ...waitMoves,
  ...seatColumns.flatMap((_, more) =>
    seatColumns.slice(more + 1).map((_, later) => seatMove(more, more + 1 + later)),
  ),
]

/** Those of some moves that there are seats for. */
export function movesWithSeats(
  moves: readonly SeatMove[],
  hasSeats: readonly boolean[],
): readonly SeatMove[] {
  return moves.filter(({ more, less }) => hasSeats[more] && (less < 0 || hasSeats[less]))
}

/** Adds what so many seconds of a move change to a player's columns; they begin at `first`. */
export function addMove(
  columns: Float64Array,
  { changes }: SeatMove,
  { first, seconds }: { readonly first: number; readonly seconds: number },
): void {
  for (const { place, by } of changes) columns[first + place] = (columns[first + place] ?? 0) + by * seconds
}

/** The same of so many seconds more of a seat column: who sits more waits less. */
export function addSeat(
  columns: Float64Array,
  seat: number,
  to: { readonly first: number; readonly seconds: number },
): void {
  const move = waitMoves[seat]
  if (move) addMove(columns, move, to)
}

function seatMove(more: number, less: number): SeatMove {
  const [up, down] = [seatPlaces[more] ?? [], seatPlaces[less] ?? [restPlace]]
  return {
    more,
    less,
    changes: [
      ...up.filter((own) => !down.includes(own)).map((place) => ({ place, by: 1 as const })),
      ...down.filter((own) => !up.includes(own)).map((place) => ({ place, by: -1 as const })),
    ],
  }
}
