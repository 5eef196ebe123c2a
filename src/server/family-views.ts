import 'server-only'
import { demand } from '#access/demand'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Day } from '#common/time'
import { getClubRights } from '#data/club-rights'
import type { Club } from '#data/clubs'
import { getChild } from '#data/family-children'
import { listNewestPages } from '#data/family-pages'
import { listChildrenOf } from '#data/guardianships'
import { type ClubTx, inClub } from '#data/in-club'
import { listMemberships, listSquadIdsOf } from '#data/memberships'
import { listSeasons } from '#data/seasons'
import { findWithheld } from '#data/shows-coming'
import { getSquad } from '#data/squads'
import type { FamilyPage } from '#family/family-page'
import { loadClubDay } from '#server/club-day'
import { type ComingPractice, loadComingPractice } from '#server/coming-practice'
import { recordLook } from '#server/record-look'
import { seasonFor } from '#server/squad-season'
import { dayIn } from '#server/today'
import { isMemberBetween } from '#squad/member-between'
import type { PlayerId } from '#squad/player'
import { isMemberOn, type Season } from '#squad/squad'

/** A page with who confirmed it and when. */
export type ShownPage = {
  readonly page: FamilyPage
  readonly confirmedBy: string
  readonly confirmedOn: Day
}

export type FamilySquad = {
  readonly squadId: string
  readonly squadName: string
  /** The day it is, for what waits. */
  readonly today: Day
  /** Null: nothing has been confirmed yet. */
  readonly shown: ShownPage | null
  /** Null: no practice is planned, or the child has left the squad. */
  readonly coming: ComingPractice | null
}

/** One child's page for its family: nothing of any other child is in it. */
export type FamilyBook = {
  readonly clubName: string
  readonly viewerName: string
  /** False: a coach looks at what the family sees. */
  readonly isFamily: boolean
  readonly childName: string
  readonly seasonName: string
  /** Whom to ask, in the club's own words; empty: not written yet. */
  readonly askWhom: string
  readonly squads: readonly FamilySquad[]
  /** The viewer's other children. */
  readonly others: readonly { readonly id: string; readonly name: string }[]
}

/** @throws AppError `notAllowed` or `notFound`. */
export async function loadFamilyPage(
  viewer: Viewer,
  { playerId, now = new Date() }: { readonly playerId: PlayerId; readonly now?: Date },
): Promise<FamilyBook> {
  const isFamily = viewer.playerIds.includes(playerId)
  return inClub(
    viewer.clubId,
    async (tx) => {
      const squadIds = await listSquadIdsOf(tx, playerId)
      demand(viewer, 'seeFamilyPage', { kind: 'player', playerId, squadIds })
      const child = await getChild(tx, playerId)
      const { club, today } = await loadClubDay(tx, now)
      const season = seasonFor(await listSeasons(tx), today)
      if (!season) throw new AppError('notFound', `no season in club ${viewer.clubId}`)
      // Another squad's coach reads of its own squad only.
      const open = squadIds.filter(
        (squadId) => isFamily || may(viewer, 'seeFamilyPage', { kind: 'squad', squadId }),
      )
      const isWithheld = isFamily && (await findWithheld(tx, { personId: viewer.personId, playerId }))
      await recordLook(tx, viewer, { page: 'family', playerId })
      return {
        clubName: club.name,
        viewerName: viewer.name,
        isFamily,
        childName: child.name,
        seasonName: season.name,
        askWhom: (await getClubRights(tx)).askWhom,
        squads: await loadSquads(tx, { squadIds: open, playerId, club, season, today, now, isWithheld }),
        others: isFamily ? await loadOthers(tx, viewer, playerId) : [],
      }
    },
    { guardianId: isFamily ? viewer.personId : null },
  )
}

async function loadOthers(tx: ClubTx, viewer: Viewer, playerId: PlayerId): Promise<FamilyBook['others']> {
  const children = await listChildrenOf(tx, viewer.personId)
  return children.filter(({ id }) => id !== playerId).map(({ id, name }) => ({ id, name }))
}

type OfChild = {
  readonly squadIds: readonly string[]
  readonly playerId: PlayerId
  readonly club: Club
  readonly season: Season
  readonly today: Day
  readonly now: Date
  readonly isWithheld: boolean
}

/** The squads the child was in this season, in order of age. */
async function loadSquads(tx: ClubTx, of: OfChild): Promise<readonly FamilySquad[]> {
  const { squadIds, playerId, club, season, today, now, isWithheld } = of
  const asked = { seasonId: season.id, playerIds: [playerId], squadIds, shownAt: now }
  const pages = await listNewestPages(tx, asked)
  const squads: (FamilySquad & { readonly ageLimit: number })[] = []
  for (const squadId of squadIds) {
    const memberships = (await listMemberships(tx, squadId)).filter((one) => one.playerId === playerId)
    if (!isMemberBetween(memberships, { playerId, ...season })) continue
    const { name, ageLimit } = await getSquad(tx, squadId)
    const newest = pages.find((one) => one.squadId === squadId)
    squads.push({
      squadId,
      squadName: name,
      ageLimit,
      today,
      shown: newest
        ? {
            page: newest.page,
            confirmedBy: newest.confirmedBy,
            confirmedOn: dayIn(club.timeZone, newest.confirmedAt),
          }
        : null,
      coming: isMemberOn(memberships, { playerId, day: today })
        ? await loadComingPractice(tx, { squadId, today, isWithheld })
        : null,
    })
  }
  return squads.sort((a, b) => a.ageLimit - b.ageLimit).map(({ ageLimit: _, ...squad }) => squad)
}
