import type { SessionAccount } from '#fairness/account'
import { accountMatch } from '#fairness/account-match'
import { accountPractice } from '#fairness/account-practice'
import { type Flag, raiseFlags } from '#fairness/flags/raise-flags'
import type { PassedTurn } from '#fairness/passed'
import { type Standings, standingsNow } from '#fairness/standing'
import { replayPractice } from '#practice/replay'
import { policyInForce } from '#squad/policy'
import { isMemberOn, type Squad } from '#squad/squad'
import type { DemoClub } from '../../seeds/demo-club'
import type { DemoSession } from '../../seeds/demo-session'

export type DemoSeason = {
  readonly accounts: readonly SessionAccount[]
  readonly standings: Standings
  readonly flags: readonly Flag[]
}

/** The sessions of a squad that have been held by the club's calendar day. */
export function heldSessions(club: DemoClub, squad: Squad): readonly DemoSession[] {
  return club.sessions.filter(
    (session) =>
      session.squadId === squad.id && session.cancelledAt === null && session.day < club.club.calendarDay,
  )
}

/** A squad's season of the demo club, folded by the core alone: no database. */
export function foldDemoSeason(club: DemoClub, squad: Squad): DemoSeason {
  const memberships = club.memberships.filter((line) => line.squadId === squad.id)
  const sessions = heldSessions(club, squad)
  const accounts = sessions.map((session) => accountOf(club, squad, session))
  const passed = sessions.flatMap((session): PassedTurn[] =>
    replayPractice(session.events).passes.map((pass) => ({ ...pass, sessionId: session.id })),
  )
  const agreements = club.adjustments
  const flags = raiseFlags({
    accounts,
    players: club.players,
    memberships,
    terms: club.season.terms,
    policy: policyInForce(club.policies, { ageLimit: squad.ageLimit, day: club.club.calendarDay }),
    passed,
    agreements,
    medianTurnSeconds: 50,
    on: club.club.calendarDay,
  })
  return { accounts, standings: standingsNow({ accounts, passed, agreements }), flags }
}

function accountOf(club: DemoClub, squad: Squad, session: DemoSession): SessionAccount {
  const { id, day, written, lengthSeconds, periods, spells } = session
  const memberships = club.memberships.filter((line) => line.squadId === squad.id)
  const rules = {
    able: new Set(club.players.filter((player) => player.keeps).map((player) => player.id)),
    members: new Set(
      memberships
        .map((line) => line.playerId)
        .filter((playerId) => isMemberOn(memberships, { playerId, day })),
    ),
    written,
    middleAttackShare: policyInForce(club.policies, { ageLimit: squad.ageLimit, day }).middleAttackShare,
  }
  const register = session.register.filter((line) => line.state === 'here')
  if (session.kind === 'match')
    return accountMatch({ id, day, periods, register, spells }, rules, session.register)
  const { turns } = replayPractice(session.events)
  return accountPractice({ id, day, lengthSeconds, register, turns }, rules, session.register)
}
