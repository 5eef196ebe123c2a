import type { PracticeToDeal } from '#ahead/chance/practice-to-deal'
import { keepSeat } from '#ahead/seat-places'

/** Even shares of one practice: in it everyone came or did not, so there are two kinds of players. */
export type EvenShare = {
  /** By seat column, of one who may keep and of one who may not. */
  readonly able: Float64Array
  readonly others: Float64Array
}

/**
 * The even shares among those who came, as in the book. Places are those of the plan: where more came than it reckons
 * with, more wait; where too few came to fill them, there are fewer in the same proportion; where none who may keep
 * came, nobody keeps.
 */
export function shareEvenly(
  { seats, liveSeconds, keeps, columns }: PracticeToDeal,
  { here, count }: { readonly here: Int32Array; readonly count: number },
  { able, others }: EvenShare,
): void {
  let ableCount = 0
  for (let at = 0; at < count; at++) if (keeps[here[at] ?? 0]) ableCount++
  const keepSeats = ableCount > 0 ? Math.min(seats[keepSeat] ?? 0, liveSeconds * ableCount) : 0
  const keepDue = ableCount > 0 ? keepSeats / ableCount : 0
  const left = count * liveSeconds - keepSeats
  let wanted = 0
  for (const seat of columns) if (seat !== keepSeat) wanted += seats[seat] ?? 0
  const part = left > 0 ? Math.min(1, left / Math.max(wanted, 1)) / left : 0
  for (const seat of columns) {
    if (seat === keepSeat) continue
    able[seat] = (seats[seat] ?? 0) * part * (liveSeconds - keepDue)
    others[seat] = (seats[seat] ?? 0) * part * liveSeconds
  }
  able[keepSeat] = keepDue
  others[keepSeat] = 0
}
