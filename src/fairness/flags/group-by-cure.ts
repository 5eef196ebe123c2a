import type { Seconds } from '#common/time'
import { type Situation, situations } from '#exposure/column'
import { cureOf } from '#fairness/flags/cure'
import type { CureGroup, FlagRule } from '#fairness/flags/flag-rule'
import type { Flag } from '#fairness/flags/raise-flags'
import { flagRules } from '#fairness/flags/registry'
import type { PlayerId } from '#squad/player'

/** What a practice can offer: rounds of so many turns at so many stations. */
export type RoundToGive = {
  readonly turns: number
  readonly stations: number
  readonly medianTurnSeconds: Seconds
}

/** A round of one role in one situation for a few players, with the flags it clears. */
export type RoundCure = {
  readonly kind: 'round'
  readonly place: { readonly role: 'attack' | 'defend'; readonly situation: Situation }
  readonly rounds: number
  readonly playerIds: readonly PlayerId[]
  readonly clears: readonly Flag[]
  /** Of all flags that were to be answered. */
  readonly of: number
}

/** Flags that no round clears, by what they need. */
export type GroupCure = {
  readonly kind: 'group'
  readonly group: CureGroup
  readonly playerIds: readonly PlayerId[]
  readonly flags: readonly Flag[]
  readonly of: number
}

export type CureToday = RoundCure | GroupCure

/** Players on the asking side of one station: two against one, two against two, one against two. */
const sideSizes = {
  outnumbering: 2,
  level: 2,
  outnumbered: 1,
} satisfies Record<Situation, number>

/** More than this many rounds of one thing are not a plan for a day. */
const mostRounds = 3

const mostCures = 3

/**
 * What to do today, at most three things: first the round that clears most flags, then the next of what is left, then
 * what no round can clear. Quiet notes stay on the coach's page of the player.
 */
export function groupByCure(flags: readonly Flag[], round: RoundToGive | null): readonly CureToday[] {
  const ruleOf = new Map<string, FlagRule>(flagRules.map((rule) => [rule.name, rule]))
  const asked = flags.filter((flag) => ruleOf.get(flag.rule) && !ruleOf.get(flag.rule)?.isQuiet)
  const cures: CureToday[] = []
  let left = asked
  while (round && cures.length < mostCures) {
    const best = bestRound(left, { round, ruleOf, of: asked.length })
    if (!best) break
    cures.push(best)
    left = left.filter((flag) => !best.clears.includes(flag))
  }
  const groups = new Map<CureGroup, Flag[]>()
  for (const flag of left) {
    const group = ruleOf.get(flag.rule)?.cureGroup ?? 'note'
    groups.set(group, [...(groups.get(group) ?? []), flag])
  }
  const bySize = [...groups].sort(([, a], [, b]) => b.length - a.length)
  for (const [group, inGroup] of bySize.slice(0, mostCures - cures.length)) {
    const playerIds = [...new Set(inGroup.map((flag) => flag.playerId))]
    cures.push({ kind: 'group', group, playerIds, flags: inGroup, of: asked.length })
  }
  return cures
}

type Search = {
  readonly round: RoundToGive
  readonly ruleOf: ReadonlyMap<string, FlagRule>
  readonly of: number
}

/** The fewest rounds that clear anything, and of those the place that clears most. */
function bestRound(flags: readonly Flag[], search: Search): RoundCure | null {
  const places = (['attack', 'defend'] as const).flatMap((role) =>
    situations.map((situation) => ({ role, situation })),
  )
  for (let rounds = 1; rounds <= mostRounds; rounds += 1) {
    const found = places
      .map((place) => ({ place, clears: clearedBy(place, { flags, rounds, search }) }))
      .reduce((best, one) => (one.clears.length > best.clears.length ? one : best))
    if (found.clears.length > 0) {
      const playerIds = [...new Set(found.clears.map((flag) => flag.playerId))]
      return { kind: 'round', place: found.place, rounds, playerIds, clears: found.clears, of: search.of }
    }
  }
  return null
}

/**
 * The flags that so many rounds of a place clear. Nobody can have more turns than the rounds have, nor all together more
 * than there are places; those who need fewest turns for their flags come first.
 */
function clearedBy(
  place: RoundCure['place'],
  {
    flags,
    rounds,
    search,
  }: { readonly flags: readonly Flag[]; readonly rounds: number; readonly search: Search },
): readonly Flag[] {
  const { round, ruleOf } = search
  const turns = rounds * round.turns
  const needs = new Map<PlayerId, { turns: number; flags: Flag[] }>()
  for (const flag of flags) {
    const rule = ruleOf.get(flag.rule)
    if (flag.scope !== 'practice' || !rule?.isHelpedBy?.(place, flag)) continue
    const needed = cureOf(flag, { rule, scope: flag.scope, medianTurnSeconds: round.medianTurnSeconds }).turns
    if (needed === null || needed > turns) continue
    const need = needs.get(flag.playerId) ?? { turns: 0, flags: [] }
    needs.set(flag.playerId, { turns: Math.max(need.turns, needed), flags: [...need.flags, flag] })
  }
  let places = turns * round.stations * sideSizes[place.situation]
  const cleared: Flag[] = []
  const byTurnsPerFlag = [...needs.values()].sort(
    (a, b) => a.turns / a.flags.length - b.turns / b.flags.length,
  )
  for (const need of byTurnsPerFlag) {
    if (need.turns > places) continue
    places -= need.turns
    cleared.push(...need.flags)
  }
  return cleared
}
