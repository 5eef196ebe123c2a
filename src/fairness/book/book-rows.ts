import type { Seconds } from '#common/time'
import { type Role, roles, type Situation } from '#exposure/column'
import type { SessionAccount } from '#fairness/account'
import type { AgreedFewerTurns } from '#fairness/agreed-due'
import { byName } from '#fairness/book/by-name'
import { type JudgedFigure, judgeFigure } from '#fairness/book/judged-figure'
import { isNarrow, type Narrowing, narrowAccount } from '#fairness/book/narrow-account'
import { openGoalDue } from '#fairness/cause'
import { hasMatchesForRoles } from '#fairness/flags/matches-for-roles'
import type { PassedTurn } from '#fairness/passed'
import { type KindStanding, type SessionKind, standingsNow } from '#fairness/standing'
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
  /** Over a third of its time in goal: what everyone would be due if all took a turn there. */
  readonly openGoal: Readonly<Record<Role, number>> | null
  readonly passed: KindStanding['passed']
}

export type BookInput = {
  /** Of one kind. */
  readonly accounts: readonly SessionAccount[]
  readonly kind: SessionKind
  readonly narrowing: Narrowing
  readonly players: readonly Player[]
  readonly policy: Policy
  readonly passed: readonly PassedTurn[]
  readonly agreements: readonly AgreedFewerTurns[]
}

/** The lines of the book by name, members and guests apart. Their order is never that of a figure. */
export function bookRows(input: BookInput): {
  readonly members: readonly BookRow[]
  readonly guests: readonly BookRow[]
} {
  return { members: rowsOf(input, 'member'), guests: rowsOf(input, 'guest') }
}

function rowsOf(input: BookInput, as: 'member' | 'guest'): readonly BookRow[] {
  const { accounts, narrowing, passed, agreements, kind } = input
  // What is said of a player's whole time is read from all of it, whatever the figures are narrowed to.
  const whole = standingsNow({ accounts, passed, agreements, as })
  const standings = isNarrow(narrowing)
    ? standingsNow({ accounts: accounts.map((one) => narrowAccount(one, narrowing)), passed, agreements, as })
    : whole
  const planned = asPlannedSeconds(accounts)
  const rows: BookRow[] = []
  for (const player of byName(input.players)) {
    const standing = standings.get(player.id)?.[kind]
    const wholeStanding = whole.get(player.id)?.[kind]
    if (!standing || !wholeStanding || wholeStanding.sessionsWritten === 0) continue
    rows.push(
      rowOf(input, {
        player,
        standing,
        whole: wholeStanding,
        as,
        plannedSeconds: planned.get(player.id) ?? 0,
      }),
    )
  }
  return rows
}

type OfPlayer = {
  readonly player: Player
  readonly standing: KindStanding
  readonly whole: KindStanding
  readonly as: 'member' | 'guest'
  readonly plannedSeconds: Seconds
}

function rowOf(input: BookInput, { player, standing, whole, as, plannedSeconds }: OfPlayer): BookRow {
  const { policy, kind } = input
  return {
    player,
    sessionsThere: whole.attended.length,
    sessionsWritten: whole.sessionsWritten,
    liveSeconds: whole.liveSeconds,
    figures: rolesLookedAt(input.narrowing.situation).map((role) => ({
      role,
      figure: judgeFigure(standing.roles[role], {
        role,
        kind,
        wantsToKeep: player.wantsToKeep,
        isMember: as === 'member',
        policy,
      }),
    })),
    hasMatchesForRoles: hasMatchesForRoles(whole, { policy, scope: kind }),
    isMostlyAsPlanned: plannedSeconds > whole.liveSeconds / 2,
    openGoal: openGoalDue(whole),
    passed: whole.passed,
  }
}

/** Nobody keeps goal or waits in a situation. */
export function rolesLookedAt(situation: Situation | null): readonly Role[] {
  return situation === null ? roles : ['attack', 'defend']
}

function asPlannedSeconds(accounts: readonly SessionAccount[]): ReadonlyMap<PlayerId, Seconds> {
  const seconds = new Map<PlayerId, Seconds>()
  for (const account of accounts) {
    if (account.written !== 'asPlanned') continue
    for (const { playerId, liveSeconds } of account.presences) {
      seconds.set(playerId, (seconds.get(playerId) ?? 0) + liveSeconds)
    }
  }
  return seconds
}
