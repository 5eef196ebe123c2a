import { mayTakeIn } from '#rotation/may-take'
import { resting, roleIndexOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import { seatTurn } from '#rotation/seat-turn'
import { onDuty } from '#solver/player-network'
import type { Keepers } from '#solver/round-timetables'
import type { Timetable, TimetableRows } from '#solver/timetable-rows'

/** What it costs to give a player another role than its timetable's, to let it rest instead, or beyond the limit. */
const another = 1
const restInstead = 3
const tooLong = 1000

/**
 * The plan in which each player goes through the turns as in its timetable; stations are given out turn by turn. Where
 * seats and timetables do not match, as few players as can be depart from theirs, and the plan may then break the rest
 * limit. `keepers`: keepers who stay, when not those of the timetables. Null where keepers who stay do not fit together, or a turn cannot be seated.
 */
export function planOfTimetables(
  rows: TimetableRows,
  timetables: readonly Timetable[],
  asked: { readonly restLimit: number | null; readonly keepers?: Keepers },
): RotationPlan | null {
  const { restLimit } = asked
  const { problem } = rows
  const mayTake = mayTakeIn(problem)
  const of = new Map(timetables.map((own) => [own.player, own]))
  const runs = problem.players.map(() => 0)
  const plan: (readonly number[])[] = []
  for (const turn of problem.turns.keys()) {
    const keepers = new Map(asked.keepers?.[turn])
    const kinds = problem.players.map((_, player) => {
      const arc = rows.networks[player]?.arcs[turn]?.[of.get(player)?.arcs[turn] ?? -1]
      if (arc?.kind === onDuty && !asked.keepers) keepers.set(player, arc.place)
      return arc?.kind ?? -1
    })
    const places = seatTurn(problem, mayTake, {
      turn,
      keepers,
      cost: (player, place) => {
        if (keepers.has(player)) return 0
        const late = place === resting && restLimit !== null && (runs[player] ?? 0) >= restLimit ? tooLong : 0
        if (kinds[player] === (place === resting ? 3 : roleIndexOf(place))) return late
        return late + (place === resting ? restInstead : another)
      },
    })
    if (places === null) return null
    plan.push(places)
    places.forEach((place, player) => {
      runs[player] = place === resting ? (runs[player] ?? 0) + 1 : 0
    })
  }
  return plan
}
