import 'server-only'
import { demand } from '#access/demand'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Day } from '#common/time'
import { listAdults } from '#data/adults'
import { listChildrenOfSquad } from '#data/family-children'
import { listGuardianships } from '#data/guardianships'
import { inClub } from '#data/in-club'
import { listLinks } from '#data/one-time-links'
import { getSquad } from '#data/squads'
import { loadClubDay } from '#server/club-day'
import { type LinkRow, linkRow } from '#server/link-rows'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { recordLook } from '#server/record-look'
import { isOnlyThisMachine } from '#server/request-address'
import { dayIn } from '#server/today'
import type { Squad } from '#squad/squad'

/** One of a child's recorded guardians, for its coach: a name and whether the page was opened, and nothing else. */
export type GuardianRow = {
  readonly personId: string
  readonly name: string
  readonly claimedOn: Day | null
  readonly hasAccess: boolean
  /** There is an address that a link can be mailed to; which is for the administrator to see. */
  readonly canBeMailed: boolean
  readonly links: readonly LinkRow[]
}

export type FamilyLinksPage = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly playerId: string
  readonly childName: string
  readonly guardians: readonly GuardianRow[]
  /** Whom to ask to record a guardian. */
  readonly administrators: readonly string[]
  readonly mayRecord: boolean
  readonly isOnlyThisMachine: boolean
}

type Asked = {
  readonly squadId: string
  readonly playerId: string
  /** What the installation is reached under. */
  readonly address: string
  readonly now?: Date
}

/** Links for one child's guardians. @throws AppError `notAllowed` or `notFound`. */
export async function loadFamilyLinks(
  viewer: Viewer,
  { squadId, playerId, address, now = new Date() }: Asked,
): Promise<FamilyLinksPage> {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'inviteFamily', { kind: 'squad', squadId })
    const squad = await getSquad(tx, squadId)
    const child = (await listChildrenOfSquad(tx, squadId)).find(({ id }) => id === playerId)
    if (!child) throw new AppError('notFound', `no child ${playerId} in squad ${squadId}`)
    const { club } = await loadClubDay(tx, now)
    const at = { now, timeZone: club.timeZone }
    const adults = await listAdults(tx)
    const links = await listLinks(tx, { playerId })
    await recordLook(tx, viewer, { page: 'familyLinks', playerId })
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad,
      playerId,
      childName: child.name,
      guardians: (await listGuardianships(tx, { playerId })).map(({ personId, personName, claimedAt }) => {
        const adult = adults.find(({ id }) => id === personId)
        return {
          personId,
          name: personName,
          claimedOn: claimedAt && dayIn(club.timeZone, claimedAt),
          hasAccess: adult?.accessEndedAt === null,
          canBeMailed: Boolean(adult?.email),
          links: links.filter((link) => link.personId === personId).map((link) => linkRow(link, at)),
        }
      }),
      administrators: adults
        .filter(({ role, accessEndedAt }) => role === 'administrator' && accessEndedAt === null)
        .map(({ name }) => name),
      mayRecord: may(viewer, 'managePeople', { kind: 'club' }),
      isOnlyThisMachine: isOnlyThisMachine(address),
    }
  })
}
