import 'server-only'
import { allDays, type Day } from '#common/time'
import { removeAccounts, saveAccounts } from '#data/accounts'
import type { ClubTx } from '#data/in-club'
import { listKeepsChanges } from '#data/keeps-changes'
import { listMemberships } from '#data/memberships'
import { listPlayers } from '#data/players'
import { listPolicies } from '#data/policies'
import { getSession, listSessions, lockSessions, type Session } from '#data/sessions'
import { getSquad } from '#data/squads'
import { loadWritten, type WrittenSession } from '#data/written-sessions'
import type { SessionAccount } from '#fairness/account'
import { accountMatch } from '#fairness/account-match'
import { accountPractice } from '#fairness/account-practice'
import { ableOn, type KeepsChange } from '#squad/keeps-change'
import type { Player } from '#squad/player'
import { type PolicyVersion, policyInForce } from '#squad/policy'
import { isMemberOn, type Membership, type SquadId } from '#squad/squad'

/** What the account of any session of a squad depends on beside the session. */
export type SquadRules = {
  readonly ageLimit: number
  readonly memberships: readonly Membership[]
  readonly policies: readonly PolicyVersion[]
  /** Of members and of whoever else is seen: who may be put in goal, and since when. */
  readonly players: readonly Pick<Player, 'id' | 'keeps'>[]
  readonly keepsChanges: readonly KeepsChange[]
}

/** Folds a session with the members, with those who might keep goal, and by the policy, of its own day. */
export function accountOf(written: WrittenSession, rules: SquadRules): SessionAccount {
  const { day, written: way } = written.session
  const memberIds = rules.memberships.map(({ playerId }) => playerId)
  const members = new Set(memberIds.filter((playerId) => isMemberOn(rules.memberships, { playerId, day })))
  const { middleAttackShare } = policyInForce(rules.policies, { ageLimit: rules.ageLimit, day })
  const able = ableOn(rules.players, { changes: rules.keepsChanges, day })
  const accountRules = { able, members, middleAttackShare, written: way }
  return written.kind === 'practice'
    ? accountPractice(written.practice, accountRules, written.register)
    : accountMatch(written.match, accountRules, written.register)
}

/**
 * Folds sessions of one squad anew and keeps what came out in the place of what was kept before; a cancelled session
 * keeps nothing. To be called, in the same transaction, by whatever changes what an account is made of: the register,
 * turns or spells, the way of writing, day, length or periods, a cancellation. The number of queries does not grow
 * with the number of sessions.
 * @throws InvariantError when the books of a session do not balance, and then nothing of the transaction stays.
 */
export async function rebuildSessions(
  tx: ClubTx,
  squadId: SquadId,
  sessions: readonly Session[],
): Promise<void> {
  if (sessions.length === 0) return
  const ids = sessions.map(({ id }) => id)
  await lockSessions(tx, ids)
  const written = await loadWritten(
    tx,
    sessions.filter(({ isCancelled }) => !isCancelled),
  )
  const rules = await loadSquadRules(tx, squadId, written)
  await removeAccounts(tx, ids)
  await saveAccounts(
    tx,
    written.map((one) => accountOf(one, rules)),
  )
}

/** What the accounts of these sessions depend on beside the sessions. */
export async function loadSquadRules(
  tx: ClubTx,
  squadId: SquadId,
  written: readonly WrittenSession[],
): Promise<SquadRules> {
  const { ageLimit } = await getSquad(tx, squadId)
  const memberships = await listMemberships(tx, squadId)
  const policies = await listPolicies(tx)
  const seen = written.flatMap(({ register }) => register.map(({ playerId }) => playerId))
  const ids = [...new Set([...seen, ...memberships.map(({ playerId }) => playerId)])]
  const players = await listPlayers(tx, ids)
  return { ageLimit, memberships, policies, players, keepsChanges: await listKeepsChanges(tx, ids) }
}

/** Rebuilds the account of one session. See `rebuildSessions`. @throws AppError `notFound`. */
export async function rebuildSession(tx: ClubTx, sessionId: string): Promise<void> {
  const session = await getSession(tx, sessionId)
  await rebuildSessions(tx, session.squadId, [session])
}

/**
 * Rebuilds the accounts of a squad from one day to another, both included; without days, all there are. After a change
 * of memberships, of the policy, or of who may keep goal. How many sessions were rebuilt.
 */
export async function rebuildSquad(
  tx: ClubTx,
  { squadId, from = allDays.from, to = allDays.to }: { squadId: SquadId; from?: Day; to?: Day },
): Promise<number> {
  const sessions = await listSessions(tx, { squadId, from, to })
  await rebuildSessions(tx, squadId, sessions)
  return sessions.length
}
