import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Day } from '#common/time'
import { listNewestPages } from '#data/family-pages'
import { countReaders, noReaders, type Readers } from '#data/family-readers'
import { inClub } from '#data/in-club'
import { findShowsComing } from '#data/shows-coming'
import { type FamilyChange, pageChanges } from '#family/page-changes'
import { showsFrom } from '#family/shows-from'
import type { Waiting } from '#family/what-waits'
import { pageDigest } from '#server/page-digest'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { loadPagesOfSquad } from '#server/pages-of-squad'
import { loadSquadSeason } from '#server/squad-season'
import { dayIn } from '#server/today'
import type { Squad, SquadId } from '#squad/squad'

/** One child's page as the list of a squad's families has it. */
export type FamilyRow = {
  readonly playerId: string
  readonly name: string
  readonly leftOn: Day | null
  /** The mark of what the book says now. */
  readonly mark: string
  /** Against the page confirmed last; empty: nothing new. */
  readonly changes: readonly FamilyChange[]
  readonly waits: readonly Waiting[]
  /** Null: never confirmed. */
  readonly confirmedOn: Day | null
  /** The confirmed page is not seen before the next morning. */
  readonly isOnItsWay: boolean
  readonly readers: Readers
}

export type FamiliesBook = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly showsComing: boolean
  /** The morning on which families see what is confirmed now. */
  readonly seenOn: Day
  readonly rows: readonly FamilyRow[]
}

/** What families of a squad read, and what waits to be confirmed. @throws AppError `notAllowed` or `notFound`. */
export async function loadFamilies(
  viewer: Viewer,
  { squadId, now = new Date() }: { readonly squadId: SquadId; readonly now?: Date },
): Promise<FamiliesBook> {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'confirmFamilyPage', { kind: 'squad', squadId })
    const of = await loadSquadSeason(tx, viewer, { squadId, now })
    const pages = await loadPagesOfSquad(tx, of)
    const playerIds = pages.map(({ child }) => child.id)
    const asked = { seasonId: of.season.id, playerIds, squadIds: [squadId] }
    const confirmed = new Map((await listNewestPages(tx, asked)).map((one) => [one.playerId, one]))
    const readers = await countReaders(tx, playerIds)
    const { timeZone } = of.club
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad: of.squad,
      showsComing: await findShowsComing(tx, squadId),
      seenOn: dayIn(timeZone, showsFrom({ confirmedOn: dayIn(timeZone, now), timeZone })),
      rows: pages.map(({ child, leftOn, page, waits }) => {
        const last = confirmed.get(child.id)
        return {
          playerId: child.id,
          name: child.name,
          leftOn,
          mark: pageDigest(page),
          changes: pageChanges(last?.page ?? null, page),
          waits,
          confirmedOn: last ? dayIn(timeZone, last.confirmedAt) : null,
          isOnItsWay: last !== undefined && last.showsFrom > now,
          readers: readers.get(child.id) ?? noReaders,
        }
      }),
    }
  })
}
