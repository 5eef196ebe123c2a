import 'server-only'
import { demand } from '#access/demand'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import type { Day } from '#common/time'
import { listClosedDays } from '#data/closed-days'
import { getClub } from '#data/clubs'
import { type ClubTx, inClub } from '#data/in-club'
import { countMembersOn } from '#data/member-counts'
import { listSeasons } from '#data/seasons'
import { listCoachesOn } from '#data/squad-coaches'
import { listSquads } from '#data/squads'
import { loadClubDay } from '#server/club-day'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { seasonFor } from '#server/squad-season'
import { canTakeOurContent } from '#server/take-our-content'
import type { ClosedDays } from '#squad/closed-days'
import type { Season, Squad } from '#squad/squad'

/** A squad with who coaches it and how many belong to it today. */
export type ArrangedSquad = Squad & { readonly coachNames: readonly string[]; readonly members: number }

export type ClubHome = {
  readonly frame: FrameOfPage
  readonly name: string
  readonly timeZone: string
  readonly timeZones: readonly string[]
  readonly today: Day
  readonly season: Season | null
  readonly squads: readonly ArrangedSquad[]
  readonly canTakeOurs: boolean
  /** Goals of its matches are written down. */
  readonly countsGoals: boolean
  /** Only the administrator has people, requests and the record. */
  readonly canManagePeople: boolean
  readonly canAnswerRequests: boolean
  readonly canSeeRecord: boolean
}

/** Where a club is arranged. @throws AppError `notAllowed`. */
export async function loadClubHome(viewer: Viewer, now = new Date()): Promise<ClubHome> {
  demand(viewer, 'arrangeClub', { kind: 'club' })
  const mayClub = (action: 'managePeople' | 'answerRequests' | 'seeAudit') =>
    may(viewer, action, { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const { club, today } = await loadClubDay(tx, now)
    return {
      frame: await loadFrame(tx, viewer, null),
      name: club.name,
      timeZone: club.timeZone,
      timeZones: listTimeZones(club.timeZone),
      today,
      season: seasonFor(await listSeasons(tx), today),
      squads: await loadArranged(tx, today),
      canTakeOurs: await canTakeOurContent(tx),
      countsGoals: club.countsGoals,
      canManagePeople: mayClub('managePeople'),
      canAnswerRequests: mayClub('answerRequests'),
      canSeeRecord: mayClub('seeAudit'),
    }
  })
}

export type ClubSeasons = {
  readonly frame: FrameOfPage
  readonly today: Day
  /** The newest first. */
  readonly seasons: readonly Season[]
  /** Of the whole club, those to come. */
  readonly closed: readonly ClosedDays[]
}

/** @throws AppError `notAllowed`. */
export async function loadClubSeasons(viewer: Viewer, now = new Date()): Promise<ClubSeasons> {
  demand(viewer, 'arrangeClub', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const { today } = await loadClubDay(tx, now)
    const frame = await loadFrame(tx, viewer, null)
    const closed = (await listClosedDays(tx, { squadId: null })).filter(({ lastDay }) => lastDay >= today)
    return { frame, today, seasons: (await listSeasons(tx)).toReversed(), closed }
  })
}

export type ClubSquads = {
  readonly frame: FrameOfPage
  readonly squads: readonly ArrangedSquad[]
  readonly hasSeason: boolean
  readonly canManagePeople: boolean
}

/** @throws AppError `notAllowed`. */
export async function loadClubSquads(viewer: Viewer, now = new Date()): Promise<ClubSquads> {
  demand(viewer, 'arrangeClub', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const { today } = await loadClubDay(tx, now)
    return {
      frame: await loadFrame(tx, viewer, null),
      squads: await loadArranged(tx, today),
      hasSeason: (await listSeasons(tx)).length > 0,
      canManagePeople: may(viewer, 'managePeople', { kind: 'club' }),
    }
  })
}

export type NoSeason = {
  readonly frame: FrameOfPage
  readonly clubName: string
  readonly canArrange: boolean
}

/** What pages of squads show where the club has no season yet; anybody of the club may read it. */
export async function loadNoSeason(viewer: Viewer): Promise<NoSeason> {
  return inClub(viewer.clubId, async (tx) => ({
    frame: await loadFrame(tx, viewer, null),
    clubName: (await getClub(tx)).name,
    canArrange: may(viewer, 'arrangeClub', { kind: 'club' }),
  }))
}

async function loadArranged(tx: ClubTx, today: Day): Promise<readonly ArrangedSquad[]> {
  const coaches = await listCoachesOn(tx, today)
  const members = await countMembersOn(tx, today)
  return (await listSquads(tx)).map((squad) => ({
    ...squad,
    coachNames: coaches.filter(({ squadId }) => squadId === squad.id).map(({ personName }) => personName),
    members: members.get(squad.id) ?? 0,
  }))
}

/** As the list of this machine has them, with the one that is set though it be missing there. */
export function listTimeZones(held: string): readonly string[] {
  return [...new Set([...Intl.supportedValuesOf('timeZone'), 'UTC', held])].sort()
}
