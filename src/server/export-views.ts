import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { allDays, isDay } from '#common/time'
import { recordAudit } from '#data/audit'
import { inClub } from '#data/in-club'
import { type ExportedFile, exportFile, exportKinds } from '#server/export-file'
import type { SquadId } from '#squad/squad'

/** What an address asks to be taken away; days left out or not days mean all of them. */
export type ExportWish = {
  readonly squadId: SquadId
  readonly what: string
  readonly from: string | null
  readonly to: string | null
}

/**
 * A file of a squad for whoever may have it. That it went out is kept in the audit: children's names leave the book.
 * @throws AppError `notAllowed`, or `notFound` for a squad or file there is none of.
 */
export async function loadExport(
  viewer: Viewer,
  { squadId, what, from, to }: ExportWish,
  now = new Date(),
): Promise<ExportedFile> {
  demand(viewer, 'exportFiles', { kind: 'squad', squadId })
  const kind = exportKinds.find((one) => one === what)
  if (!kind) throw new AppError('notFound', `no export ${what}`)
  const scope = {
    squadId,
    from: from !== null && isDay(from) ? from : allDays.from,
    to: to !== null && isDay(to) ? to : allDays.to,
  }
  return inClub(
    viewer.clubId,
    async (tx) => {
      const file = await exportFile(tx, kind, { ...scope, now })
      const by = { personId: viewer.personId, at: now }
      const detail = { what: kind, from: scope.from, to: scope.to }
      await recordAudit(tx, { action: 'exportFile', objectKind: 'squad', objectId: squadId, detail, by })
      return file
    },
    { timeoutMs: 60_000 },
  )
}
