import type { KeeperDuties } from '#rotation/choose-keepers'
import { restLimitOf } from '#rotation/limits'
import type { MayTake } from '#rotation/may-take'
import { OwnLimits } from '#rotation/own-limits'
import { resting, roleIndexOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'
import { seatTurn } from '#rotation/seat-turn'

/** Whoever would rest too long, or beyond what it agreed to, is looked after before anything else counts. */
const tooLong = 1e10

export type Seating = {
  readonly restLimit: number | null
  readonly duties: KeeperDuties
  /** Player × 4 + role: seconds owed. What is played is taken off. */
  readonly owed: Float64Array
  /** What keepers who stay play was taken off when they were chosen. */
  readonly isDutyBooked: boolean
  /** What a place costs besides, in seconds²; `run`: turns the player has waited in a row, `beyond`: turns beyond a limit. */
  readonly besides: (
    at: { readonly turn: number; readonly seconds: number; readonly run: number; readonly beyond: number },
    player: number,
    place: number,
  ) => number
}

/**
 * A plan made turn by turn, each seated as cheaply as can be for what is owed by then. Keeps every rule but, it may be,
 * limits on rests and of single players; null when a turn cannot be seated.
 */
export function seatAllTurns(
  problem: RotationProblem,
  mayTake: MayTake,
  { restLimit, duties, owed, isDutyBooked, besides }: Seating,
): RotationPlan | null {
  const runs = problem.players.map(({ restedBefore = 0 }) => restedBefore)
  const limits = new OwnLimits(problem, duties)
  const restLimits = problem.players.map((own) =>
    restLimit === null ? Number.POSITIVE_INFINITY : restLimitOf(own, restLimit),
  )
  const plan: (readonly number[])[] = []
  for (const [turn, { seconds }] of problem.turns.entries()) {
    const keepers = duties[turn] ?? new Map<number, number>()
    const places = seatTurn(problem, mayTake, {
      turn,
      keepers,
      cost: (player, place) => {
        // They keep whatever it costs.
        if (keepers.has(player)) return 0
        const own = owed[player * 4 + roleIndexOf(place)] as number
        const run = runs[player] ?? 0
        const beyond =
          place === resting ? Math.max(0, run + 1 - (restLimits[player] ?? 0)) : limits.excess(player)
        const other = besides({ turn, seconds, run, beyond }, player, place)
        return other + (own - seconds) ** 2 - own ** 2 + tooLong * beyond
      },
    })
    if (places === null) return null
    plan.push(places)
    places.forEach((place, player) => {
      runs[player] = place === resting ? (runs[player] ?? 0) + 1 : 0
      limits.book(turn, player, place)
      if (place < resting || (isDutyBooked && keepers.has(player))) return
      const index = player * 4 + roleIndexOf(place)
      owed[index] = (owed[index] as number) - seconds
    })
  }
  return plan
}
