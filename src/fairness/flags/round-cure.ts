import type { Seconds } from '#common/time'
import { type Situation, situations } from '#exposure/column'
import { fewestTurns } from '#fairness/flags/cure'
import type { FlagRule } from '#fairness/flags/flag-rule'
import type { Flag } from '#fairness/flags/raise-flags'
import type { PlayerId } from '#squad/player'

/** What a practice can offer: a round of so many turns at so many stations, for one side of them. */
export type RoundToGive = {
  readonly turns: number
  readonly stations: number
  readonly medianTurnSeconds: Seconds
}

export type SidePlace = { readonly role: 'attack' | 'defend'; readonly situation: Situation }

/** What so many rounds with a few players on one side do for their flags. */
export type RoundsGiven = {
  readonly place: SidePlace
  readonly rounds: number
  readonly playerIds: readonly PlayerId[]
  readonly clears: readonly Flag[]
  /** Flags that come nearer to the band without reaching it. */
  readonly starts: readonly Flag[]
  /** Flags put right, parts of them included. */
  readonly worth: number
}

/** Players of the own side at one station: two against one, two against two, one against two. */
const sideSizes = { outnumbering: 2, level: 2, outnumbered: 1 } satisfies Record<Situation, number>

/** More rounds of one thing than this are no plan for a day. */
const mostRounds = 3

const places: readonly SidePlace[] = (['attack', 'defend'] as const).flatMap((role) =>
  situations.map((situation) => ({ role, situation })),
)

type Search = { readonly round: RoundToGive; readonly ruleOf: ReadonlyMap<string, FlagRule> }

/**
 * The place in which one round does most for the flags; then, where that round clears none of them, the fewest rounds
 * that clear one. Null when no round helps.
 */
export function bestRounds(flags: readonly Flag[], search: Search): RoundsGiven | null {
  const [first, ...others] = places.map((place) => giveRounds(flags, { ...search, place, rounds: 1 }))
  const best = others.reduce((top, one) => (one.worth > (top?.worth ?? 0) ? one : top), first)
  if (!best || best.worth === 0) return null
  const more = Array.from({ length: mostRounds }, (_, index) =>
    giveRounds(flags, { ...search, place: best.place, rounds: index + 1 }),
  )
  return more.find((given) => given.clears.length > 0) ?? best
}

/**
 * Nobody can have more turns than the rounds have, nor all together more than there are places; those whose turns do
 * most for their flags come first.
 */
export function giveRounds(
  flags: readonly Flag[],
  { round, ruleOf, place, rounds }: Search & { readonly place: SidePlace; readonly rounds: number },
): RoundsGiven {
  const turns = rounds * round.turns
  const needs = new Map<PlayerId, Need[]>()
  for (const flag of flags) {
    if (flag.scope !== 'practice' || !ruleOf.get(flag.rule)?.isHelpedBy?.(place, flag)) continue
    const needed = fewestTurns(flag, round.medianTurnSeconds)
    if (needed !== null)
      needs.set(flag.playerId, [...(needs.get(flag.playerId) ?? []), { flag, turns: needed }])
  }
  const asked = [...needs]
    .map(([playerId, own]) => {
      const most = Math.min(turns, Math.max(...own.map((need) => need.turns)))
      return { playerId, own, turns: most, worthOfTurn: worthOf(own, most) / most }
    })
    .sort((a, b) => b.worthOfTurn - a.worthOfTurn)
  let left = turns * round.stations * sideSizes[place.situation]
  const given = asked.flatMap((one) => {
    const turnsGiven = Math.min(one.turns, left)
    left -= turnsGiven
    return turnsGiven > 0 ? [{ ...one, turnsGiven }] : []
  })
  const isCleared = (need: Need, turnsGiven: number) => need.turns <= turnsGiven
  return {
    place,
    rounds,
    playerIds: given.map((one) => one.playerId),
    clears: given.flatMap((one) => one.own.filter((n) => isCleared(n, one.turnsGiven)).map((n) => n.flag)),
    starts: given.flatMap((one) => one.own.filter((n) => !isCleared(n, one.turnsGiven)).map((n) => n.flag)),
    worth: given.reduce((sum, one) => sum + worthOf(one.own, one.turnsGiven), 0),
  }
}

type Need = { readonly flag: Flag; readonly turns: number }

function worthOf(needs: readonly Need[], turns: number): number {
  return needs.reduce((sum, need) => sum + Math.min(1, turns / need.turns), 0)
}
