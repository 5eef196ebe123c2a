import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { earlierDay } from '#common/earlier-day'
import type { Day } from '#common/time'
import { type Club, getClub } from '#data/clubs'
import type { ClubTx } from '#data/in-club'
import { listPolicies } from '#data/policies'
import { listSeasons } from '#data/seasons'
import { getSquad } from '#data/squads'
import { todayOf } from '#server/today'
import { type Policy, type PolicyVersion, policyInForce } from '#squad/policy'
import type { Season, Squad, SquadId, Term } from '#squad/squad'

/** A squad on a day of its season, and the rules that hold then: what every page of a squad begins with. */
export type SquadSeason = {
  readonly club: Club
  readonly squad: Squad
  readonly season: Season
  readonly today: Day
  /** In force today. */
  readonly policy: Policy
  /** The newest first. */
  readonly policies: readonly PolicyVersion[]
}

/**
 * The season that runs today, else the last one that has begun, else the first to come.
 * @throws AppError `notAllowed` when the squad is not the viewer's, `notFound` without a squad, `noSeason`.
 */
export async function loadSquadSeason(
  tx: ClubTx,
  viewer: Viewer,
  { squadId, now = new Date() }: { readonly squadId: SquadId; readonly now?: Date },
): Promise<SquadSeason> {
  demand(viewer, 'seeSquad', { kind: 'squad', squadId })
  return getSquadSeason(tx, { squadId, now })
}

/** The same where access has been asked, or nobody asks: a command. @throws AppError `notFound` or `noSeason`. */
export async function getSquadSeason(
  tx: ClubTx,
  { squadId, now }: { readonly squadId: SquadId; readonly now: Date },
): Promise<SquadSeason> {
  const club = await getClub(tx)
  const squad = await getSquad(tx, squadId)
  const today = todayOf(club, now)
  const season = seasonFor(await listSeasons(tx), today)
  if (!season) throw new AppError('noSeason', `no season in club ${club.id}`)
  const policies = await listPolicies(tx)
  const policy = policyInForce(policies, { ageLimit: squad.ageLimit, day: today })
  return { club, squad, season, today, policy, policies }
}

/** `seasons` in order of time. */
export function seasonFor(seasons: readonly Season[], today: Day): Season | null {
  const begun = seasons.filter(({ firstDay }) => firstDay <= today)
  return begun.at(-1) ?? seasons[0] ?? null
}

/** The days looked at, both included: a term or the season, never beyond today. Null when none of them has come yet. */
export function daysSoFar(
  { season, today }: Pick<SquadSeason, 'season' | 'today'>,
  term: Term | null,
): { readonly from: Day; readonly to: Day } | null {
  const { firstDay, lastDay } = term ?? season
  const to = earlierDay(lastDay, today)
  return firstDay <= to ? { from: firstDay, to } : null
}
