import { type SeatSeconds, seatColumns, seatMeaning } from '#ahead/seat-column'
import { noSeconds } from '#rotation/fair-seconds'
import type { ColumnSeconds, RotationColumn } from '#rotation/problem'

/** What leans in seat columns come to in the columns of the book: who sits more waits less. */
export function columnLeans(leans: SeatSeconds | undefined): ColumnSeconds {
  const sums: Record<RotationColumn, number> = { ...noSeconds }
  for (const column of seatColumns) {
    const lean = leans?.[column] ?? 0
    const { role, situation } = seatMeaning[column]
    sums[role] += lean
    if (situation) sums[situation] += lean
    sums.rest -= lean
  }
  return sums
}
