import 'server-only'
import { earlierDay } from '#common/earlier-day'
import type { Day } from '#common/time'
import { listAccounts } from '#data/accounts'
import { fewerTurnsOf, listAdjustments } from '#data/adjustments'
import { listErasedIds } from '#data/erasures'
import {
  clearFlags,
  type FlagState,
  type JudgedFlag,
  listFlagStates,
  lockFlags,
  saveFlags,
} from '#data/flag-states'
import type { ClubTx } from '#data/in-club'
import { listKeepsChanges } from '#data/keeps-changes'
import { listMemberships } from '#data/memberships'
import { listSquadPlayers } from '#data/players'
import { listPolicies } from '#data/policies'
import { getSeason } from '#data/seasons'
import { getSquad } from '#data/squads'
import { findMedianTurnSeconds, listPassed } from '#data/turn-sums'
import { answerFlag } from '#fairness/flags/answer'
import { type Flag, raiseFlags } from '#fairness/flags/raise-flags'
import { flagRules } from '#fairness/flags/registry'
import { policyInForce } from '#squad/policy'
import type { SeasonId, SquadId } from '#squad/squad'

type SquadDay = { readonly squadId: SquadId; readonly seasonId: SeasonId; readonly today: Day }

/**
 * Judges a squad's season anew, up to today, and lets what was found meet what is kept: raised, come back, cleared, or
 * still silent because a coach has answered. To be called after accounts were rebuilt, in the same transaction.
 */
export async function refreshFlags(tx: ClubTx, at: SquadDay & { readonly now: Date }): Promise<void> {
  const { squadId, seasonId } = at
  await lockFlags(tx, squadId)
  const flags = await judgeSquad(tx, at)
  const kept = new Map(
    (await listFlagStates(tx, { squadIds: [squadId], seasonId })).map((one) => [keyOf(one), one]),
  )
  const found = new Set(flags.map(keyOf))
  await saveFlags(tx, { squadId, seasonId, judged: flags.map((flag) => meet(flag, kept.get(keyOf(flag)))) })
  const gone = [...kept.values()].filter((one) => !found.has(keyOf(one)) && one.status !== 'cleared')
  await clearFlags(tx, { flagIds: gone.map(({ id }) => id), at: at.now })
}

async function judgeSquad(tx: ClubTx, { squadId, seasonId, today }: SquadDay): Promise<readonly Flag[]> {
  const season = await getSeason(tx, seasonId)
  const { ageLimit } = await getSquad(tx, squadId)
  const days = { squadId, from: season.firstDay, to: earlierDay(today, season.lastDay) }
  const players = await listSquadPlayers(tx, squadId)
  const playerIds = players.map(({ id }) => id)
  const adjustments = await listAdjustments(tx, playerIds)
  const erased = await listErasedIds(tx)
  const flags = raiseFlags({
    accounts: await listAccounts(tx, days),
    players,
    memberships: await listMemberships(tx, squadId),
    terms: season.terms,
    policy: policyInForce(await listPolicies(tx), { ageLimit, day: days.to }),
    passed: await listPassed(tx, days),
    agreements: fewerTurnsOf(adjustments),
    keepsChanges: await listKeepsChanges(tx, playerIds),
    medianTurnSeconds: await findMedianTurnSeconds(tx, days),
    on: days.to,
  })
  // A column without a name is owed nothing, and nobody can be told of it.
  return flags.filter(({ playerId }) => !erased.has(playerId))
}

function meet(flag: Flag, kept: FlagState | undefined): JudgedFlag {
  const rule = flagRules.find(({ name }) => name === flag.rule)
  const stored = kept ? { status: kept.status, acknowledgedSize: kept.acknowledged?.size ?? null } : null
  const { status } = answerFlag(stored, { finding: flag, sizeIn: rule?.sizeIn ?? 'seconds' })
  return { flag, status: status === 'acknowledged' ? 'acknowledged' : 'open' }
}

function keyOf({
  playerId,
  rule,
  scope,
  subject,
}: Pick<Flag, 'playerId' | 'rule' | 'scope' | 'subject'>): string {
  return [playerId, rule, scope, subject].join('\n')
}
