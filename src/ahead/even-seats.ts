import type { AheadPractice, AheadProblem, Offer } from '#ahead/problem'
import { noSeats, type SeatColumn, type SeatSeconds, seatColumns } from '#ahead/seat-column'

/**
 * What every player may expect of an offer when all is shared out evenly: seat seconds by its chance to come. Keeping is
 * shared by those who may keep, all else by what keeping leaves of everyone's time, as fair shares are in the book. The
 * turns of a practice are taken as shared by the number expected: a first-order approximation, exact where it is certain
 * who comes and all turns have as many in goal. Where fewer are expected than there are places, places stay free: nobody
 * sits for longer than it is there.
 */
export function evenSeats(
  { players }: Pick<AheadProblem, 'players'>,
  { comes }: Pick<AheadPractice, 'comes'>,
  { seats, liveSeconds }: Pick<Offer, 'seats' | 'liveSeconds'>,
): readonly SeatSeconds[] {
  const keepers = players.reduce((all, { keeps }, player) => all + (keeps ? (comes[player] ?? 0) : 0), 0)
  // Where nobody who may keep is expected, nobody is due of keeping; and nobody keeps longer than there is play.
  const keepDue = keepers > 0 ? Math.min(liveSeconds, seats.keep / keepers) : 0
  const left = players.map(
    ({ keeps }, player) => (comes[player] ?? 0) * (liveSeconds - (keeps ? keepDue : 0)),
  )
  const allLeft = left.reduce((all, one) => all + one, 0)
  const outOfGoal = seatColumns.reduce((all, column) => all + (column === 'keep' ? 0 : seats[column]), 0)
  const filled = Math.min(1, outOfGoal > 0 ? allLeft / outOfGoal : 1)
  return players.map(({ keeps }, player) => {
    const chance = comes[player] ?? 0
    if (chance <= 0) return noSeats
    const own: Record<SeatColumn, number> = { ...noSeats }
    if (allLeft > 0)
      for (const column of seatColumns) own[column] = (filled * seats[column] * (left[player] ?? 0)) / allLeft
    own.keep = keeps ? chance * keepDue : 0
    return own
  })
}
