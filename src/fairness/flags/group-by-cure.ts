import { groupBy } from '#common/group-by'
import type { CureGroup, FlagRule } from '#fairness/flags/flag-rule'
import type { Flag } from '#fairness/flags/raise-flags'
import { flagRules } from '#fairness/flags/registry'
import { bestRounds, type RoundsGiven, type RoundToGive, type SidePlace } from '#fairness/flags/round-cure'
import type { PlayerId } from '#squad/player'

export type { RoundToGive } from '#fairness/flags/round-cure'

/** Rounds of one role in one situation for a few players, with the flags they clear: at least one. */
export type RoundCure = Omit<RoundsGiven, 'worth'> & {
  readonly kind: 'round'
  /** Of all flags that were to be answered. */
  readonly of: number
}

/** Flags that nothing clears in a day, by what they need. */
export type GroupCure = {
  readonly kind: 'group'
  readonly group: CureGroup
  readonly playerIds: readonly PlayerId[]
  readonly flags: readonly Flag[]
  /** Where a round would make a start on all of them; null where turns are not the cure. */
  readonly startIn: SidePlace | null
  readonly of: number
}

export type CureToday = RoundCure | GroupCure

const mostCures = 3

/**
 * What to do today, at most three things: first the round that does most, for those a little behind and those far behind,
 * then the next for what is left. One thing of the three is kept for goal-keeping and safety when any is to be answered.
 * Quiet notes stay on the coach's page of the player.
 */
export function groupByCure(flags: readonly Flag[], round: RoundToGive | null): readonly CureToday[] {
  const ruleOf = new Map<string, FlagRule>(flagRules.map((rule) => [rule.name, rule]))
  const asked = flags.filter((flag) => ruleOf.has(flag.rule) && !ruleOf.get(flag.rule)?.isQuiet)
  const urgent = asked.filter((flag) => isUrgent(ruleOf.get(flag.rule)))
  const roundsAtMost = mostCures - (urgent.length > 0 ? 1 : 0)
  const cures: CureToday[] = []
  let left: readonly Flag[] = asked
  while (round && cures.length < roundsAtMost) {
    const best = bestRounds(left, { round, ruleOf })
    if (!best) break
    const helped = new Set([...best.clears, ...best.starts])
    cures.push(toCure(best, asked.length))
    left = left.filter((flag) => !helped.has(flag))
  }
  const groups = groupsOf(left, ruleOf)
  return [
    ...cures,
    ...groups.slice(0, mostCures - cures.length).map((group) => ({ ...group, of: asked.length })),
  ]
}

/** Goal-keeping and safety: what may speak early, unless a turn would do. */
function isUrgent(rule: FlagRule | undefined): boolean {
  return rule?.speaksEarly === true && rule.isHelpedBy === undefined
}

function toCure({ worth: _, ...given }: RoundsGiven, of: number): CureToday {
  if (given.clears.length > 0) return { kind: 'round', ...given, of }
  const { place, playerIds, starts } = given
  return { kind: 'group', group: place.role, playerIds, flags: starts, startIn: place, of }
}

/** Goal-keeping and safety first, then by how many flags they answer. */
function groupsOf(
  flags: readonly Flag[],
  ruleOf: ReadonlyMap<string, FlagRule>,
): readonly Omit<GroupCure, 'of'>[] {
  const groups = groupBy(flags, (flag): CureGroup => ruleOf.get(flag.rule)?.cureGroup ?? 'note')
  const urgency = (inGroup: readonly Flag[]) =>
    inGroup.some((flag) => isUrgent(ruleOf.get(flag.rule))) ? 1 : 0
  return [...groups]
    .sort(([, a], [, b]) => urgency(b) - urgency(a) || b.length - a.length)
    .map(([group, inGroup]) => ({
      kind: 'group',
      group,
      playerIds: [...new Set(inGroup.map((flag) => flag.playerId))],
      flags: inGroup,
      startIn: null,
    }))
}
