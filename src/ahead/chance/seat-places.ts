import { type SeatColumn, seatColumns, seatMeaning } from '#ahead/seat-column'
import { type RotationColumn, rotationColumns } from '#rotation/problem'

export const seatCount = seatColumns.length
export const keepSeat = seatColumns.indexOf('keep')

/** Places of the columns that a seat counts for; where it has no situation, −1. */
export const seatPlaces: readonly { readonly role: number; readonly situation: number }[] = seatColumns.map(
  (column: SeatColumn) => {
    const { role, situation } = seatMeaning[column]
    const place = (of: RotationColumn) => rotationColumns.indexOf(of)
    return { role: place(role), situation: situation ? place(situation) : -1 }
  },
)
export const restPlace = rotationColumns.indexOf('rest')
