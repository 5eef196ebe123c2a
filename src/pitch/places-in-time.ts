import type { Seconds } from '#common/time'
import type { EpochMs } from '#pitch/pitch-event'
import { secondAt } from '#pitch/pitch-times'
import type { PlanFrom } from '#pitch/plan-as-it-stands'
import { isSameStations } from '#pitch/same-stations'
import type { PlannedTurn } from '#planning/practice-plan'
import type { Station } from '#practice/turn'

type OwnTurn = { readonly index: number; readonly turn: PlannedTurn }

/** A new plan that changed places of turns played as a round. */
export type NewPlaces = { readonly second: Seconds; readonly turns: readonly PlannedTurn[] }

/**
 * New plans, in order, that changed the places of turns before they were tapped as played, the plan before all of them
 * first. Empty where the tap says other places than the plan had then: another phone, which knew another plan, tapped it.
 */
export function newPlacesOf(
  turns: readonly OwnTurn[],
  at: { readonly history: readonly PlanFrom[]; readonly beganAt: EpochMs; readonly by: Seconds },
): readonly NewPlaces[] {
  const known = at.history.map((plan) => ({
    second: plan.at < at.beganAt ? Number.NEGATIVE_INFINITY : secondAt(at.beganAt, plan.at),
    turns: plan.turns,
  }))
  const before = known.filter(({ second }) => second < at.by)
  const last = before.at(-1)
  const isAsTapped = turns.every(({ index, turn }) => {
    const planned = last?.turns[index]
    return planned !== undefined && isSameStations(planned.stations, turn.stations)
  })
  if (!isAsTapped) return []
  return before.filter(({ turns: now }, place) => {
    const earlier = before[place - 1]?.turns
    return !earlier || turns.some(({ index }) => !isSamePlaces(earlier[index], now[index]))
  })
}

/** The places of a turn when it began, and how they changed while it was played. */
export function placesDuring(
  { index, turn }: OwnTurn,
  { start, end }: { readonly start: Seconds; readonly end: Seconds },
  plans: readonly NewPlaces[],
): {
  readonly stations: readonly Station[]
  readonly changes: readonly { readonly second: Seconds; readonly stations: readonly Station[] }[]
} {
  const at = (plan: NewPlaces | undefined) => plan?.turns[index]?.stations ?? turn.stations
  return {
    stations: at(plans.findLast(({ second }) => second <= start)),
    changes: plans
      .filter(({ second }) => start < second && second < end)
      .map((plan) => ({ second: plan.second, stations: at(plan) })),
  }
}

/**
 * Where turns that ended by a second can have begun at the earliest: whoever plans a round anew before it begins plays
 * most of it as long as it was planned, whoever does so during it does not have the time left.
 */
export function earliestAfterPlans(
  plans: readonly NewPlaces[],
  { from, by, planned }: { readonly from: Seconds; readonly by: Seconds; readonly planned: Seconds },
): Seconds {
  const before = plans.map(({ second }) => second).filter((second) => 4 * (by - second) >= 3 * planned)
  return Math.max(from, ...before)
}

function isSamePlaces(one: PlannedTurn | undefined, other: PlannedTurn | undefined): boolean {
  return (
    one === other ||
    (one !== undefined && other !== undefined && isSameStations(one.stations, other.stations))
  )
}
