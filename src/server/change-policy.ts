import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { daysLater } from '#common/days-later'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { allDays, type Day } from '#common/time'
import { recordAudit } from '#data/audit'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { listPolicies, recordPolicy } from '#data/policies'
import { listSeasons } from '#data/seasons'
import { listSessions, type Session } from '#data/sessions'
import { lockSquad } from '#data/squad-lock'
import { listSquads } from '#data/squads'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import type { PolicyInput } from '#server/policy-input'
import { rebuildSessions } from '#server/rebuild'
import { refreshFlags } from '#server/refresh-flags'
import { seasonFor } from '#server/squad-season'
import { type Policy, type PolicyVersion, policyInForce } from '#squad/policy'
import type { Squad } from '#squad/squad'

/** Matches of many squads may be counted anew. */
const timeoutMs = 120_000
const daysAhead = 730

/**
 * Makes a new version of the club's rules. Matches from its first day on are counted anew where the middle counts
 * otherwise, and flags are judged anew where other rules hold today; all of it or nothing.
 * @throws AppError `notAllowed`.
 */
export async function changePolicyOf(
  viewer: Viewer,
  input: PolicyInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  demand(viewer, 'changePolicy', { kind: 'club' })
  return inClub(
    viewer.clubId,
    async (tx) => {
      const { today } = await loadClubDay(tx, now)
      const squads = await listSquads(tx)
      // Whoever changes them at the same time waits here, and then sees this version.
      for (const { id } of squads) await lockSquad(tx, id)
      const before = await listPolicies(tx)
      const problems = problemsOfChange(input, { versions: before, squads, today })
      if (problems.length > 0) return refuse(...problems)
      const version = { id: newId(), ...input }
      const by = { personId: viewer.personId, at: now }
      await recordPolicy(tx, { version, by })
      const detail = { ageLimit: input.ageLimit, effectiveFrom: input.effectiveFrom }
      await recordAudit(tx, {
        action: 'changePolicy',
        objectKind: 'policy',
        objectId: version.id,
        detail,
        by,
      })
      const after = await listPolicies(tx)
      const counted = await bringUpToDate(tx, {
        before,
        after,
        squads,
        from: input.effectiveFrom,
        today,
        now,
      })
      return saved(sentenceOf(input.effectiveFrom, { today, ...counted }))
    },
    { timeoutMs },
  )
}

/** Why a change cannot be made. `versions`: as `listPolicies` has them. */
export function problemsOfChange(
  { ageLimit, effectiveFrom, policy }: PolicyInput,
  known: {
    readonly versions: readonly PolicyVersion[]
    readonly squads: readonly Squad[]
    readonly today: Day
  },
): readonly Problem[] {
  const problems: Problem[] = []
  if (ageLimit !== null && !known.squads.some((squad) => squad.ageLimit === ageLimit))
    problems.push({ path: 'ageLimit', message: `no squad is under ${ageLimit}; choose the age of a squad` })
  const newest = known.versions.find((version) => version.ageLimit === ageLimit)
  if (newest && effectiveFrom < newest.effectiveFrom)
    problems.push({
      path: 'effectiveFrom',
      message: `is before ${newest.effectiveFrom}, from when the newest rules hold; choose that day or a later one`,
    })
  const latest = daysLater(known.today, daysAhead)
  if (effectiveFrom > latest)
    problems.push({ path: 'effectiveFrom', message: `is too far ahead; choose a day up to ${latest}` })
  if (newest && isSame(newest.policy, policy))
    problems.push({
      path: '',
      message: 'These are the rules that are there already; change at least one of them.',
    })
  return problems
}

function isSame(a: Policy, b: Policy): boolean {
  return (Object.keys(a) as (keyof Policy)[]).every((key) => a[key] === b[key])
}

type Change = {
  readonly before: readonly PolicyVersion[]
  readonly after: readonly PolicyVersion[]
  readonly squads: readonly Squad[]
  readonly from: Day
  readonly today: Day
  readonly now: Date
}

type Counted = { readonly matches: number; readonly squads: number }

async function bringUpToDate(tx: ClubTx, change: Change): Promise<Counted> {
  let matches = 0
  for (const squad of change.squads) {
    const changed = (await listMatchesFrom(tx, squad, change.from)).filter(
      ({ day }) =>
        inForceOn(change.before, squad, day).middleAttackShare !==
        inForceOn(change.after, squad, day).middleAttackShare,
    )
    await rebuildSessions(tx, squad.id, changed)
    matches += changed.filter(({ written }) => written !== 'notWritten').length
  }
  const season = seasonFor(await listSeasons(tx), change.today)
  const day = season && season.lastDay < change.today ? season.lastDay : change.today
  const judged = change.squads.filter(
    (squad) => !isSame(inForceOn(change.before, squad, day), inForceOn(change.after, squad, day)),
  )
  for (const { id: squadId } of season ? judged : [])
    await refreshFlags(tx, { squadId, seasonId: season?.id ?? '', today: change.today, now: change.now })
  return { matches, squads: judged.length }
}

function listMatchesFrom(tx: ClubTx, { id }: Squad, from: Day): Promise<readonly Session[]> {
  return listSessions(tx, { squadId: id, from, to: allDays.to, kind: 'match', withCancelled: false })
}

function inForceOn(versions: readonly PolicyVersion[], { ageLimit }: Squad, day: Day): Policy {
  return policyInForce(versions, { ageLimit, day })
}

function sentenceOf(from: Day, { today, matches, squads }: Counted & { readonly today: Day }): string {
  const parts = [
    from > today ? `The new rules will hold from ${from}.` : `The new rules hold from ${from}.`,
    matches > 0 ? `${matches === 1 ? '1 match was' : `${matches} matches were`} counted anew.` : '',
    squads > 0 ? `The flags of ${squads === 1 ? '1 squad' : `${squads} squads`} were judged anew.` : '',
  ]
  return parts.filter(Boolean).join(' ')
}
