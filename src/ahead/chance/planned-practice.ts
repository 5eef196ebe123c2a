import { type AheadPlan, chosenOffer } from '#ahead/plan'
import type { AheadPractice, AheadProblem, Offer } from '#ahead/problem'
import { type SeatColumn, seatColumns, seatMeaning } from '#ahead/seat-column'
import { themeWithAbove } from '#ahead/theme-with-above'
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

/** A practice as its plan has it, in lists that are quick to go through. */
export type PlannedPractice = {
  readonly liveSeconds: number
  /** By seat column. */
  readonly seats: Float64Array
  /** Seat columns that there are any seats of. */
  readonly columns: readonly number[]
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
export function plannedPractices(
  problem: AheadProblem,
  { choices, leans }: AheadPlan,
): readonly (PlannedPractice | null)[] {
  const gap = problem.players.flatMap((player) => rotationColumns.map((column) => player.gap[column]))
  return problem.practices.map((practice, at) => {
    const offer = chosenOffer(problem, choices, at)
    if (!offer) return null
    problem.players.forEach((_, player) => {
      seatColumns.forEach((column, seat) => {
        const lean = leans[at]?.[player]?.[column] ?? 0
        for (const place of gapPlaces(seat)) addTo(gap, player * rotationColumns.length + place, lean)
        addTo(gap, player * rotationColumns.length + restPlace, -lean)
      })
    })
    return plannedPractice({ problem, practice, offer, leans: leans[at] ?? [], meant: gap })
  })
}

function plannedPractice({
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
  readonly meant: readonly number[]
}): PlannedPractice {
  return {
    liveSeconds,
    seats: Float64Array.from(seatColumns.map((column) => seats[column])),
    columns: seatColumns.flatMap((column, seat) => (seats[column] > 0 ? [seat] : [])),
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
    meant: Float64Array.from(meant),
  }
}

function gapPlaces(seat: number): readonly number[] {
  const { role = 0, situation = -1 } = seatPlaces[seat] ?? {}
  return situation < 0 ? [role] : [role, situation]
}

function addTo(list: number[], at: number, seconds: number): void {
  list[at] = (list[at] ?? 0) + seconds
}
