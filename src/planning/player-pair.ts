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
