import 'server-only'
import { demand } from '#access/demand'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import type { Day } from '#common/time'
import { inClub } from '#data/in-club'
import { listKeepsChanges } from '#data/keeps-changes'
import { listSquadPlayers } from '#data/players'
import { termOf } from '#server/book-filter'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { loadSquadSeason } from '#server/squad-season'
import { hasKeepsChanged } from '#squad/keeps-change'
import type { Season, Squad, SquadId } from '#squad/squad'

/** The page of a squad's files: what comes in and what goes out. */
export type FilesPage = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly season: Season
  readonly termId: string | null
  /** Of what goes out, both included. */
  readonly days: { readonly from: Day; readonly to: Day }
  /** Of how many players it changed within these days whether they may be put in goal. */
  readonly keepsChanged: number
  readonly mayImport: boolean
  readonly mayExport: boolean
}

/** @throws AppError `notAllowed` or `notFound`. */
export async function loadFilesPage(
  viewer: Viewer,
  { squadId, term, now }: { readonly squadId: SquadId; readonly term: string | null; readonly now?: Date },
): Promise<FilesPage> {
  const object = { kind: 'squad', squadId } as const
  const mayImport = may(viewer, 'importFiles', object)
  if (!mayImport) demand(viewer, 'exportFiles', object)
  return inClub(viewer.clubId, async (tx) => {
    const { squad, season } = await loadSquadSeason(tx, viewer, { squadId, now })
    const chosen = termOf(season, term)
    const { firstDay: from, lastDay: to } = chosen ?? season
    const players = await listSquadPlayers(tx, squadId)
    const changes = await listKeepsChanges(
      tx,
      players.map(({ id }) => id),
    )
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad,
      season,
      termId: chosen?.id ?? null,
      days: { from, to },
      keepsChanged: players.filter((player) => hasKeepsChanged(player, { changes, from, to })).length,
      mayImport,
      mayExport: may(viewer, 'exportFiles', object),
    }
  })
}
