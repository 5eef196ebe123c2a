import type { Seconds } from '#common/time'
import { type Adaptable, adaptDesign } from '#practice/adapt-design'
import type { Adaptation } from '#practice/adaptation'
import { areaPerChild } from '#practice/area-per-child'
import type { DesignRound } from '#practice/design'
import { placesOfAll } from '#practice/round-places'

/** What a round asks of so many children who share its turns evenly. */
export type RoundEffect = {
  /** Square metres for each child who is playing; null: no places. */
  readonly areaPerChild: number | null
  readonly areaWithoutKeepers: number | null
  readonly places: number
  /** Places that nobody is there for. */
  readonly placesTooMany: number
  readonly waiting: number
  /** Live seconds that each child has a place for, and waits. */
  readonly workSeconds: Seconds
  readonly waitSeconds: Seconds
  /** From the round's first ball to its last whistle, gaps included. */
  readonly wholeSeconds: Seconds
  /** Most points a turn of it can bring a side. */
  readonly mostPoints: number
}

export function roundEffect(
  pitch: Pick<Adaptable, 'areaLengthM' | 'areaWidthM'>,
  { round, children }: { readonly round: DesignRound; readonly children: number },
): RoundEffect {
  const places = placesOfAll(round.stations).all
  const filled = Math.min(places, children)
  const live = round.turnCount * round.turnSeconds
  const workSeconds = children > 0 ? (live * filled) / children : 0
  const area = areaPerChild(pitch, round)
  return {
    areaPerChild: area?.all ?? null,
    areaWithoutKeepers: area?.withoutKeepers ?? null,
    places,
    placesTooMany: places - filled,
    waiting: Math.max(0, children - places),
    workSeconds,
    waitSeconds: live - workSeconds,
    wholeSeconds: live + Math.max(0, round.turnCount - 1) * round.gapSeconds,
    mostPoints: mostPoints(round),
  }
}

function mostPoints({ endings = [], choice }: DesignRound): number {
  const ending = Math.max(0, ...endings.map(({ points }) => points))
  return Math.max(ending, ...(choice?.sizes ?? []).map(({ points }) => points))
}

/** From first ball to last whistle of each round, all together: with the gaps between turns, and the ball in play alone. */
export function designSeconds(rounds: readonly DesignRound[]): {
  readonly whole: Seconds
  readonly live: Seconds
} {
  let [whole, live] = [0, 0]
  for (const { turnCount, turnSeconds, gapSeconds } of rounds) {
    live += turnCount * turnSeconds
    whole += turnCount * turnSeconds + Math.max(0, turnCount - 1) * gapSeconds
  }
  return { whole, live }
}

/** What one round was and becomes. */
export type AdaptationEffect = {
  /** Place in the design's rounds, from 0. */
  readonly round: number
  readonly title: string
  readonly before: RoundEffect
  readonly after: RoundEffect
  /** What is called out more than before. */
  readonly conditions: readonly string[]
}

/** What an adaptation changes, round by round, for so many children; rounds that stay as they were are left out. */
export function adaptationEffects(
  design: Adaptable,
  { adaptation, children }: { readonly adaptation: Adaptation; readonly children: number },
): readonly AdaptationEffect[] {
  const adapted = adaptDesign(design, adaptation)
  return design.rounds.flatMap((round, index) => {
    const changed = adapted.rounds[index] ?? round
    const before = roundEffect(design, { round, children })
    const after = roundEffect(adapted, { round: changed, children })
    const conditions = (changed.conditions ?? []).slice(round.conditions?.length ?? 0)
    if (conditions.length === 0 && JSON.stringify(before) === JSON.stringify(after)) return []
    return [{ round: index, title: round.title, before, after, conditions }]
  })
}
