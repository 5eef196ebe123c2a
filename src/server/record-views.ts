import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Day } from '#common/time'
import { type Adult, listAdults } from '#data/adults'
import { recordAudit } from '#data/audit'
import { listAuditPage } from '#data/audit-pages'
import { listClubPlayers } from '#data/club-players'
import { inClub } from '#data/in-club'
import { writeRecord } from '#exchange/write-record'
import { loadClubDay } from '#server/club-day'
import type { ExportedFile } from '#server/export-file'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { auditWishOf, type RecordFilter, type RecordQuery, readRecordFilter } from '#server/record-filter'
import { type RecordLine, sayEntries } from '#server/record-lines'

const linesOfPage = 50
const linesOfFile = 20_000

/** Who changed what, and which adult looked at a child. */
export type RecordPage = {
  readonly frame: FrameOfPage
  readonly today: Day
  readonly timeZone: string
  readonly filter: RecordFilter
  /** The newest first. */
  readonly lines: readonly RecordLine[]
  readonly hasMore: boolean
  readonly children: readonly { readonly id: string; readonly name: string }[]
  readonly people: readonly Pick<Adult, 'id' | 'name'>[]
  /** As many lines as a file holds at most. */
  readonly linesOfFile: number
}

/** @throws AppError `notAllowed`. */
export async function loadRecord(
  viewer: Viewer,
  { query, now = new Date() }: { readonly query: RecordQuery; readonly now?: Date },
): Promise<RecordPage> {
  demand(viewer, 'seeAudit', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const { club, today } = await loadClubDay(tx, now)
    const filter = readRecordFilter(query)
    const wish = auditWishOf(filter, club.timeZone)
    const skip = (filter.page - 1) * linesOfPage
    // One more than is shown says whether there are any.
    const entries = await listAuditPage(tx, { wish, skip, take: linesOfPage + 1 })
    const shown = entries.slice(0, linesOfPage)
    return {
      frame: await loadFrame(tx, viewer, null),
      today,
      timeZone: club.timeZone,
      filter,
      lines: await sayEntries(tx, { entries: shown, locale: club.locale }),
      hasMore: entries.length > linesOfPage,
      children: (await listClubPlayers(tx)).map(({ id, name }) => ({ id, name })),
      people: (await listAdults(tx)).map(({ id, name }) => ({ id, name })),
      linesOfFile,
    }
  })
}

/** What is looked at as a file; that it went out stands in the record too. @throws AppError `notAllowed`. */
export async function loadRecordFile(
  viewer: Viewer,
  { query, now = new Date() }: { readonly query: RecordQuery; readonly now?: Date },
): Promise<ExportedFile> {
  demand(viewer, 'seeAudit', { kind: 'club' })
  return inClub(
    viewer.clubId,
    async (tx) => {
      const { club, today } = await loadClubDay(tx, now)
      const wish = auditWishOf(readRecordFilter(query), club.timeZone)
      const entries = await listAuditPage(tx, { wish, skip: 0, take: linesOfFile })
      const by = { personId: viewer.personId, at: now }
      const detail = { lines: entries.length, ...(wish.playerId && { playerId: wish.playerId }) }
      await recordAudit(tx, { action: 'exportRecord', objectKind: 'club', objectId: club.id, detail, by })
      return {
        fileName: `${club.name} changes and looks ${today}.csv`,
        mediaType: 'text/csv; charset=utf-8; header=present',
        text: writeRecord(await sayEntries(tx, { entries, locale: club.locale })),
      }
    },
    { timeoutMs: 60_000 },
  )
}
