import { columnCount, standingNow } from '#ahead/chance/standing'
import { type AheadPlan, chosenOffer } from '#ahead/plan'
import type { AheadPractice, AheadProblem, Offer } from '#ahead/problem'
import { seatColumns } from '#ahead/seat-column'
import { addSeat, movesWithSeats, type SeatMove, seatMoves } from '#ahead/seat-moves'
import { themeWithAbove } from '#ahead/theme-with-above'

/** A practice as its plan has it, in lists that are quick to go through. */
export type PracticeToDeal = {
  readonly liveSeconds: number
  /** By seat column. */
  readonly seats: Float64Array
  /** Seat columns that there are any seats of. */
  readonly columns: readonly number[]
  readonly moves: readonly SeatMove[]
  /** The theme met, and those above it. */
  readonly themes: readonly number[]
  readonly keeps: readonly boolean[]
  readonly gentle: AheadProblem['gentle']
  /** By player and seat column: what the plan means above the even share for one who does come. */
  readonly lean: Float64Array
  /** By player and column: the gap that the plan expects after this practice. */
  readonly meant: Float64Array
}

/** The practices of a plan in order; null where nothing is chosen. */
export function practicesToDeal(
  problem: AheadProblem,
  { choices, leans }: AheadPlan,
): readonly (PracticeToDeal | null)[] {
  const { gap } = standingNow(problem)
  return problem.practices.map((practice, at) => {
    const offer = chosenOffer(problem, choices, at)
    if (!offer) return null
    problem.players.forEach((_, player) => {
      seatColumns.forEach((column, seat) => {
        const seconds = leans[at]?.[player]?.[column] ?? 0
        addSeat(gap, seat, { first: player * columnCount, seconds })
      })
    })
    return practiceToDeal({ problem, practice, offer, leans: leans[at] ?? [], meant: gap })
  })
}

function practiceToDeal({
  problem: { players, themes, gentle },
  practice: { comes },
  offer: { seats, liveSeconds, theme },
  leans,
  meant,
}: {
  readonly problem: AheadProblem
  readonly practice: AheadPractice
  readonly offer: Offer
  readonly leans: AheadPlan['leans'][number]
  readonly meant: Float64Array
}): PracticeToDeal {
  const hasSeats = seatColumns.map((column) => seats[column] > 0)
  return {
    liveSeconds,
    seats: Float64Array.from(seatColumns.map((column) => seats[column])),
    columns: seatColumns.flatMap((_, seat) => (hasSeats[seat] ? [seat] : [])),
    moves: movesWithSeats(seatMoves, hasSeats),
    themes: themeWithAbove(themes, theme),
    keeps: players.map(({ keeps }) => keeps),
    gentle,
    // What is expected of one who comes three times in four is meant for those three.
    lean: Float64Array.from(
      players.flatMap((_, player) => {
        const chance = comes[player] ?? 0
        return seatColumns.map((column) => (chance > 0 ? (leans[player]?.[column] ?? 0) / chance : 0))
      }),
    ),
    meant: meant.slice(),
  }
}
