import type { AheadPractice, AheadProblem, Offer } from '#ahead/problem'
import { noSeats, type SeatColumn, type SeatSeconds, seatColumns } from '#ahead/seat-column'

/**
 * What every player may expect of an offer when all is shared out evenly: seat seconds by its chance to come, keeping
 * among those who may keep. The turns of a practice are taken as shared by the number expected: a first-order
 * approximation, exact where it is certain who comes.
 */
export function evenSeats(
  { players }: Pick<AheadProblem, 'players'>,
  { comes }: AheadPractice,
  { seats }: Offer,
): readonly SeatSeconds[] {
  const expected = sum(comes)
  const keepers = sum(comes.filter((_, player) => players[player]?.keeps))
  // Where nobody who may keep is expected, nobody is due of keeping.
  const keepDue = keepers > 0 ? seats.keep / keepers : 0
  return players.map(({ keeps }, player) => {
    const chance = comes[player] ?? 0
    if (expected <= 0 || chance <= 0) return noSeats
    const own: Record<SeatColumn, number> = { ...noSeats }
    for (const column of seatColumns) own[column] = (chance * seats[column]) / expected
    own.keep = keeps ? chance * keepDue : 0
    return own
  })
}

const sum = (numbers: readonly number[]) => numbers.reduce((all, one) => all + one, 0)
