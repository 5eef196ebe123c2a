import type { Seconds } from '#common/time'
import { type Column, type Role, roles, type Situation } from '#exposure/column'
import { byName } from '#fairness/book/by-name'
import { type JudgedFigure, judgeFigure } from '#fairness/book/judged-figure'
import { openGoalDue } from '#fairness/cause'
import { hasMatchesForRoles } from '#fairness/flags/matches-for-roles'
import type { PassedTurn } from '#fairness/passed'
import { emptyKindStanding, type KindStanding, type SessionKind } from '#fairness/standing'
import { addFigures, noFigure, type StandingFigure } from '#fairness/standing-figure'
import type { Player, PlayerId } from '#squad/player'
import type { Policy } from '#squad/policy'

/** A player's line of the season book. */
export type BookRow = {
  readonly player: Player
  readonly sessionsThere: number
  /** Written sessions it could have been there for: all since it joined; for a guest those it came to. */
  readonly sessionsWritten: number
  readonly liveSeconds: Seconds
  /** Roles that are looked at, in their order. */
  readonly figures: readonly { readonly role: Role; readonly figure: JudgedFigure }[]
  /** False in matches while there are too few of them to judge attack and defence. */
  readonly hasMatchesForRoles: boolean
  /** Drawn hatched: more than half of its time was written as planned, which is even by construction. */
  readonly isMostlyAsPlanned: boolean
  /** Over a third of its time in goal: what would be due in each role if all took a turn there. */
  readonly openGoal: Readonly<Record<Role, number>> | null
  readonly passed: KindStanding['passed']
}

/** A player's sum in one column over the sessions looked at, as a member or as a guest. */
export type BookColumn = Pick<Column, 'role'> &
  StandingFigure & { readonly playerId: PlayerId; readonly isMember: boolean }

/** A player's time at the written sessions looked at, as a member or as a guest. */
export type BookPresence = {
  readonly playerId: PlayerId
  readonly isMember: boolean
  readonly sessions: number
  readonly sessionsPlayed: number
  readonly liveSeconds: Seconds
}

export type BookInput = {
  readonly kind: SessionKind
  /** Whether `columns` are those of some themes or one situation only. */
  readonly isNarrowed: boolean
  readonly situation: Situation | null
  readonly columns: readonly BookColumn[]
  readonly presences: readonly BookPresence[]
  /** Of `presences`, what was written as planned. */
  readonly plannedPresences: readonly BookPresence[]
  readonly passed: readonly PassedTurn[]
  readonly players: readonly Player[]
  readonly policy: Policy
}

/** The lines of the book by name, members and guests apart. Their order is never that of a figure. */
export function bookRows(input: BookInput): {
  readonly members: readonly BookRow[]
  readonly guests: readonly BookRow[]
} {
  return { members: rowsOf(input, { isMember: true }), guests: rowsOf(input, { isMember: false }) }
}

function rowsOf(input: BookInput, { isMember }: { readonly isMember: boolean }): readonly BookRow[] {
  const figures = new Map<PlayerId, Map<Role, StandingFigure>>()
  for (const column of input.columns) {
    if (column.isMember !== isMember) continue
    const ofPlayer = figures.get(column.playerId) ?? new Map<Role, StandingFigure>()
    figures.set(column.playerId, ofPlayer)
    ofPlayer.set(column.role, addFigures(ofPlayer.get(column.role) ?? noFigure, column))
  }
  return byName(input.players).flatMap((player) => {
    const at = { playerId: player.id, isMember }
    const presence = presenceOf(input.presences, at)
    if (!presence) return []
    const planned = presenceOf(input.plannedPresences, at)
    return [rowOf(input, { player, presence, planned, figures: figures.get(player.id) ?? new Map() })]
  })
}

function presenceOf(
  presences: readonly BookPresence[],
  at: Pick<BookPresence, 'playerId' | 'isMember'>,
): BookPresence | undefined {
  return presences.find((one) => one.playerId === at.playerId && one.isMember === at.isMember)
}

type OfPlayer = {
  readonly player: Player
  readonly presence: BookPresence
  readonly planned: BookPresence | undefined
  readonly figures: ReadonlyMap<Role, StandingFigure>
}

function rowOf(input: BookInput, { player, presence, planned, figures }: OfPlayer): BookRow {
  const { policy, kind } = input
  const { isMember, liveSeconds } = presence
  const of = (role: Role) => figures.get(role) ?? noFigure
  const whole = { attack: of('attack'), defend: of('defend'), keep: of('keep'), rest: of('rest') }
  return {
    player,
    sessionsThere: presence.sessionsPlayed,
    sessionsWritten: presence.sessions,
    liveSeconds,
    figures: rolesLookedAt(input.situation).map((role) => ({
      role,
      figure: judgeFigure(whole[role], { role, kind, wantsToKeep: player.wantsToKeep, isMember, policy }),
    })),
    hasMatchesForRoles: hasMatchesForRoles({ sessions: presence.sessionsPlayed, kind, policy }),
    isMostlyAsPlanned: (planned?.liveSeconds ?? 0) > liveSeconds / 2,
    openGoal: input.isNarrowed ? null : openGoalDue({ ...emptyKindStanding, roles: whole, liveSeconds }),
    // A pass names neither a theme nor a situation.
    passed: passedBy(input.isNarrowed ? [] : input.passed, player.id),
  }
}

function passedBy(passed: readonly PassedTurn[], playerId: PlayerId): KindStanding['passed'] {
  const own = passed.filter((one) => one.playerId === playerId)
  const of = (role: PassedTurn['role']) => {
    const inRole = own.filter((one) => one.role === role)
    return { turns: inRole.length, seconds: inRole.reduce((sum, one) => sum + one.lengthSeconds, 0) }
  }
  return { attack: of('attack'), defend: of('defend'), keep: of('keep') }
}

/** Nobody keeps goal or waits in a situation. */
export function rolesLookedAt(situation: Situation | null): readonly Role[] {
  return situation === null ? roles : ['attack', 'defend']
}
