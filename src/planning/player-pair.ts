import { hasDay } from '#common/dated'
import type { Day } from '#common/time'
import type { PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'

/** `apart`: never at one area in one turn. `together`: on one side of one area where it costs nothing. */
export const pairKinds = ['apart', 'together'] as const
export type PairKind = (typeof pairKinds)[number]

/** Two players of a squad for some days, both included. No reason is kept anywhere; only coaches see it. */
export type PlayerPair = {
  readonly id: string
  readonly squadId: SquadId
  readonly playerIds: readonly [PlayerId, PlayerId]
  readonly kind: PairKind
  readonly firstDay: Day
  /** Null: until somebody ends it. */
  readonly lastDay: Day | null
}

/** Pairs that a plan keeps apart, with those that stand on its day and were noted after it was made. */
export function withPairsApart(
  planned: readonly (readonly [PlayerId, PlayerId])[],
  standing: { readonly pairs: readonly PlayerPair[]; readonly day: Day },
): readonly (readonly [PlayerId, PlayerId])[] {
  const isPlanned = ([one, other]: PlayerPair['playerIds']) =>
    planned.some((pair) => pair.includes(one) && pair.includes(other))
  const more = standing.pairs.filter(
    (pair) => pair.kind === 'apart' && hasDay(pair, standing.day) && !isPlanned(pair.playerIds),
  )
  return [...planned, ...more.map(({ playerIds }) => playerIds)]
}
