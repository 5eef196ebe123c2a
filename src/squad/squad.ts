import type { Day } from '#common/time'
import type { PlayerId } from '#squad/player'

export type SquadId = string
export type SeasonId = string
export type TermId = string

/** `ageLimit` 10 is the squad of the under-tens; squads always stand in this order. */
export type Squad = { readonly id: SquadId; readonly name: string; readonly ageLimit: number }

/** Both days belong to it. */
export type Term = {
  readonly id: TermId
  readonly name: string
  readonly firstDay: Day
  readonly lastDay: Day
}

export type Season = {
  readonly id: SeasonId
  readonly name: string
  readonly firstDay: Day
  readonly lastDay: Day
  /** In order of time, not overlapping, inside the season. */
  readonly terms: readonly Term[]
}

/** Both days belong to it; `lastDay` null: still a member. */
export type Membership = { readonly playerId: PlayerId; readonly firstDay: Day; readonly lastDay: Day | null }

/** Who plays with the squad on a day without being one of its members is a guest there. */
export function isMemberOn(
  memberships: readonly Membership[],
  at: { playerId: PlayerId; day: Day },
): boolean {
  return memberships.some(
    (m) => m.playerId === at.playerId && m.firstDay <= at.day && (m.lastDay === null || at.day <= m.lastDay),
  )
}
