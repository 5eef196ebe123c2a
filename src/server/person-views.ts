import 'server-only'
import { demand } from '#access/demand'
import type { Viewer, ViewerRole } from '#access/viewer'
import type { Day } from '#common/time'
import { type Adult, getAdult } from '#data/adults'
import { type FoundPlayer, findPlayers } from '#data/find-players'
import { listGuardianships } from '#data/guardianships'
import { type ClubTx, inClub } from '#data/in-club'
import { listLinks } from '#data/one-time-links'
import { listSquadLines, type SquadLine } from '#data/squad-lines'
import { listSquads } from '#data/squads'
import { loadClubDay } from '#server/club-day'
import { type LinkRow, linkRow } from '#server/link-rows'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { rolesToGive } from '#server/people-views'
import { dayIn } from '#server/today'
import type { Squad } from '#squad/squad'

/** More than this are not shown: the search is to be made narrower. */
const mostFound = 20

export type ChildOfPerson = {
  readonly playerId: string
  readonly name: string
  readonly claimedOn: Day | null
  readonly withholdsComing: boolean
}

export type PersonPage = {
  readonly frame: FrameOfPage
  readonly person: Pick<Adult, 'id' | 'name' | 'role' | 'email'> & {
    readonly hasSignIn: boolean
    readonly accessEndedOn: Day | null
    readonly isViewer: boolean
  }
  readonly roles: readonly ViewerRole[]
  readonly squads: readonly Squad[]
  readonly lines: readonly SquadLine[]
  readonly today: Day
  readonly ofPerson: readonly ChildOfPerson[]
  /** What was searched for, and who was found; null: nothing was searched for. */
  readonly search: {
    readonly text: string
    readonly found: readonly FoundPlayer[]
    readonly isCut: boolean
  } | null
  readonly links: readonly LinkRow[]
}

/** One adult of the club, for its administrator. @throws AppError `notAllowed` or `notFound`. */
export async function loadPerson(
  viewer: Viewer,
  {
    personId,
    find = '',
    now = new Date(),
  }: { readonly personId: string; readonly find?: string; readonly now?: Date },
): Promise<PersonPage> {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'managePeople', { kind: 'club' })
    const { id, name, role, email, loginId, accessEndedAt } = await getAdult(tx, personId)
    const { club, today } = await loadClubDay(tx, now)
    const dayAt = (instant: Date | null) => instant && dayIn(club.timeZone, instant)
    const guardianships = await listGuardianships(tx, { personId: id })
    return {
      frame: await loadFrame(tx, viewer, null),
      person: {
        ...{ id, name, role, email },
        hasSignIn: loginId !== null,
        accessEndedOn: dayAt(accessEndedAt),
        isViewer: id === viewer.personId,
      },
      roles: rolesToGive(viewer),
      squads: await listSquads(tx),
      lines: await listSquadLines(tx, id),
      today,
      ofPerson: guardianships.map(({ playerId, playerName, claimedAt, withholdsComing }) => ({
        playerId,
        name: playerName,
        claimedOn: dayAt(claimedAt),
        withholdsComing,
      })),
      search: await searchFor(tx, find),
      links: (await listLinks(tx, { personId: id })).map((link) =>
        linkRow(link, { now, timeZone: club.timeZone }),
      ),
    }
  })
}

async function searchFor(tx: ClubTx, find: string): Promise<PersonPage['search']> {
  const text = find.replaceAll('\u0000', '').normalize('NFC').trim().slice(0, 80)
  if (text === '') return null
  const found = await findPlayers(tx, { text, limit: mostFound + 1 })
  return { text, found: found.slice(0, mostFound), isCut: found.length > mostFound }
}
