import type { PlannedSpell } from '#lineup/match-plan'
import type { MatchFormat } from '#match/format/match-format'
import type { DoneEvent } from '#pitch/standing-events'
import { periodRunningAt } from '#touchline/match-clock'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchTimes } from '#touchline/match-times'
import { type PlannedSet, plannedSets, setsReplaced } from '#touchline/planned-sets'

/** A set of the plan, and the tap that made it at another time, or called it off. */
export type SettledSet = PlannedSet & { readonly settledBy: string | null }

export type PlansInForce = {
  /** What holds after the first so many taps. */
  readonly after: (taps: number) => readonly SettledSet[]
  /** The last re-plan's own words. */
  readonly sentence: string | null
}

/**
 * The plan as it stood after each tap. A change that was made late, early or not at all is settled by the first tap that
 * says so in its period while that plan held: two phones may say the same, and a later plan may call another change at
 * the same second.
 */
export function plansInForce(
  standing: readonly DoneEvent<MatchDeed>[],
  given: {
    readonly spells: readonly PlannedSpell[]
    readonly format: Pick<MatchFormat, 'periodSeconds'>
    readonly times: MatchTimes
  },
): PlansInForce {
  const { spells, format, times } = given
  const replans = standing.flatMap(({ deed }, index) => (deed.kind === 'replan' ? [{ deed, index }] : []))
  const steps: { from: number; sets: readonly PlannedSet[] }[] = [
    { from: 0, sets: plannedSets(spells, format) },
  ]
  for (const { deed, index } of replans) {
    const sets = plannedSets(deed.spells, format)
    steps.push({ from: index + 1, sets: setsReplaced(steps.at(-1)?.sets ?? [], { from: deed.from, sets }) })
  }
  const taps = standing.flatMap(({ id, at, deed }, index) =>
    deed.kind === 'changeMade' || deed.kind === 'changeDropped'
      ? [{ id, index, due: deed.due, period: periodRunningAt(times, at)?.period ?? null }]
      : [],
  )
  const settle = (set: PlannedSet): SettledSet => {
    const begins = steps.findIndex(({ sets }) => sets.includes(set))
    const over = steps.find(({ sets }, step) => step > begins && !sets.includes(set))
    const tap = taps.find(
      ({ index, due, period }) =>
        due === set.due &&
        period === set.period &&
        index >= (steps[begins]?.from ?? 0) &&
        index < (over?.from ?? standing.length),
    )
    return { ...set, settledBy: tap?.id ?? null }
  }
  // One object for a set from step to step: whoever has seen to it knows it again.
  const known = new Map(steps.flatMap(({ sets }) => sets).map((set) => [set, settle(set)]))
  const inForce = steps.map(({ from, sets }) => ({ from, sets: sets.flatMap((set) => known.get(set) ?? []) }))
  return {
    after: (count) => inForce.findLast(({ from }) => from <= count)?.sets ?? [],
    sentence: replans.at(-1)?.deed.sentence ?? null,
  }
}
