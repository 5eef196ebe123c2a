import 'server-only'
import { demand } from '#access/demand'
import { mayGiveRole } from '#access/giving-roles'
import { type Viewer, type ViewerRole, viewerRoles } from '#access/viewer'
import type { Day } from '#common/time'
import { listAdults } from '#data/adults'
import { inClub } from '#data/in-club'
import { listOpenLinks } from '#data/one-time-links'
import { loadClubDay } from '#server/club-day'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { dayIn } from '#server/today'

/** An adult as the list of the club has it. */
export type AdultRow = {
  readonly id: string
  readonly name: string
  readonly email: string | null
  readonly hasSignIn: boolean
  readonly accessEndedOn: Day | null
  /** The last day of a link that was made and not used yet. */
  readonly linkUntil: Day | null
}

export type PeoplePage = {
  readonly frame: FrameOfPage
  /** By role, the highest first; a role that nobody has is left out. */
  readonly groups: readonly { readonly role: ViewerRole; readonly adults: readonly AdultRow[] }[]
  /** The roles that the viewer may give. */
  readonly roles: readonly ViewerRole[]
}

/** The adults of the club, for its administrator. @throws AppError `notAllowed`. */
export async function loadPeople(viewer: Viewer, now = new Date()): Promise<PeoplePage> {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'managePeople', { kind: 'club' })
    const { club } = await loadClubDay(tx, now)
    const links = await listOpenLinks(tx, now)
    const adults = await listAdults(tx)
    const rowOf = (adult: (typeof adults)[number]): AdultRow => {
      const until = links.filter(({ personId }) => personId === adult.id).map(({ expiresAt }) => expiresAt)
      const last = until.sort((a, b) => b.getTime() - a.getTime())[0]
      return {
        id: adult.id,
        name: adult.name,
        email: adult.email,
        hasSignIn: adult.loginId !== null,
        accessEndedOn: adult.accessEndedAt && dayIn(club.timeZone, adult.accessEndedAt),
        linkUntil: last ? dayIn(club.timeZone, last) : null,
      }
    }
    return {
      frame: await loadFrame(tx, viewer, null),
      groups: viewerRoles
        .map((role) => ({ role, adults: adults.filter((one) => one.role === role).map(rowOf) }))
        .filter((group) => group.adults.length > 0),
      roles: rolesToGive(viewer),
    }
  })
}

export function rolesToGive(viewer: Viewer): readonly ViewerRole[] {
  return viewerRoles.filter((role) => mayGiveRole(viewer.role, role))
}
