import { hasDay } from '#common/dated'
import { isSamePair } from '#common/is-same-pair'
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

type Two = readonly [PlayerId, PlayerId]

/** Whom a plan keeps apart, and whom of those who stand apart it lets meet on purpose. */
type Apart = { readonly apart: readonly Two[]; readonly mayMeet?: readonly Two[] }

/** Pairs that stand apart on a day and that a plan says nothing of: they were noted after it was made. */
export function pairsForgotten(
  { apart, mayMeet = [] }: Apart,
  standing: {
    readonly pairs: readonly Pick<PlayerPair, 'kind' | 'playerIds' | 'firstDay' | 'lastDay'>[]
    readonly day: Day
  },
): readonly Two[] {
  return standing.pairs.flatMap((pair) => {
    const isMeant = pair.kind === 'apart' && hasDay(pair, standing.day)
    const isKnown = [...apart, ...mayMeet].some((own) => isSamePair(own, pair.playerIds))
    return isMeant && !isKnown ? [pair.playerIds] : []
  })
}

/** The request with a pair kept apart, or let meet in this practice. */
export function withApart<Asked extends Apart>(asked: Asked, pair: Two, isApart: boolean): Asked {
  const others = (pairs: readonly Two[]) => pairs.filter((own) => !isSamePair(own, pair))
  const [apart, mayMeet] = [others(asked.apart), others(asked.mayMeet ?? [])]
  return {
    ...asked,
    apart: isApart ? [...apart, pair] : apart,
    mayMeet: isApart ? mayMeet : [...mayMeet, pair],
  }
}
