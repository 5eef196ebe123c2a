import type { Seconds } from '#common/time'
import type { PlannedSpell } from '#lineup/match-plan'
import type { MatchFormat } from '#match/format/match-format'
import type { PlacedPlayer } from '#touchline/match-deed'
import { periodFrame, periodOfSecond } from '#touchline/period-frame'

/** From a second of the plan on, these are on: until the next such set, or the end of the period. */
export type PlannedSet = {
  readonly period: number
  /** Playing time of the plan, from the first kick-off: what a change is called by. */
  readonly due: Seconds
  /** The same from the period's kick-off. */
  readonly second: Seconds
  readonly on: readonly PlacedPlayer[]
  /** Who is on by the set before it, inside its period; null: what was before does not matter. */
  readonly before: readonly PlacedPlayer[] | null
}

/** Spells of a plan as the sets of players who are on, in order of time. */
export function plannedSets(
  spells: readonly PlannedSpell[],
  format: Pick<MatchFormat, 'periodSeconds'>,
): readonly PlannedSet[] {
  const starts = [...new Set(spells.flatMap(({ start, end }) => [start, end]))].sort((a, b) => a - b)
  const sets: PlannedSet[] = []
  for (const due of starts) {
    const on = spells
      .filter(({ start, end }) => start <= due && due < end)
      .map(({ playerId, line }) => ({ playerId, line }))
    const period = periodOfSecond(format, due)
    const last = sets.at(-1)
    const before = last?.period === period ? last.on : null
    if (on.length === 0 && before === null) continue
    if (before && isSameSet(before, on)) continue
    sets.push({ period, due, second: due - periodFrame(format, period).start, on, before })
  }
  return sets
}

function isSameSet(one: readonly PlacedPlayer[], other: readonly PlacedPlayer[]): boolean {
  const lineOf = new Map(one.map(({ playerId, line }) => [playerId, line]))
  return one.length === other.length && other.every(({ playerId, line }) => lineOf.get(playerId) === line)
}

/** Sets up to a second, and from there those of a new plan, whose first stands whatever was before it. */
export function setsReplaced(
  sets: readonly PlannedSet[],
  by: { readonly from: Seconds; readonly sets: readonly PlannedSet[] },
): readonly PlannedSet[] {
  const kept = sets.filter(({ due }) => due < by.from)
  const after = by.sets.filter(({ due }) => due >= by.from)
  return [...kept, ...after.map((set, index) => (index === 0 ? { ...set, before: null } : set))]
}
