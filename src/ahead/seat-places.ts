import { seatColumns, seatMeaning } from '#ahead/seat-column'
import { rotationColumns } from '#rotation/problem'

export const seatCount = seatColumns.length
export const keepSeat = seatColumns.indexOf('keep')

/** By seat column the places of the columns that it counts for: of its role, and then of its situation. */
export const seatPlaces: readonly (readonly number[])[] = seatColumns.map((column) => {
  const { role, situation } = seatMeaning[column]
  return [role, ...(situation ? [situation] : [])].map((own) => rotationColumns.indexOf(own))
})
export const restPlace = rotationColumns.indexOf('rest')
