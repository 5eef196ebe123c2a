import 'server-only'
import type { Problem } from '#common/problem'
import { accept, type Result } from '#common/result'
import type { ClubTx } from '#data/in-club'
import { listThemes } from '#data/themes'
import type { LogPlan } from '#exchange/log-entries'
import { planSeasonLog } from '#exchange/log-plan'
import { readSeasonLog } from '#exchange/season-log'
import type { SeasonLog } from '#fairness/season-log'
import { type ImportBook, loadKnownSessions } from '#server/import-book'

/** An import of a season may take this long; then all of it is undone. */
export const importTimeoutMs = 180_000

/** A season log, parsed from JSON, read and planned against the book. */
export async function planLog(
  tx: ClubTx,
  json: unknown,
  book: ImportBook,
): Promise<Result<{ readonly log: SeasonLog; readonly plan: LogPlan }, Problem>> {
  const log = readSeasonLog(json)
  if (!log.ok) return log
  const plan = planSeasonLog(log.value, {
    players: book.known.filter(({ isOfSquad }) => isOfSquad),
    themes: await listThemes(tx),
    sessions: await loadKnownSessions(tx, book.squad.id),
    seasons: book.seasons,
  })
  return plan.ok ? accept({ log: log.value, plan: plan.value }) : plan
}
