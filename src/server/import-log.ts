import 'server-only'
import type { Problem } from '#common/problem'
import { accept, type Result } from '#common/result'
import type { ClubTx } from '#data/in-club'
import { listKeepsChanges } from '#data/keeps-changes'
import { listThemes } from '#data/themes'
import type { LogPlan } from '#exchange/log-entries'
import { planSeasonLog } from '#exchange/log-plan'
import { readSeasonLog } from '#exchange/season-log'
import { lastDayOf, type SeasonLog } from '#fairness/season-log'
import { type ImportBook, loadKnownSessions } from '#server/import-book'
import { asOf } from '#squad/keeps-change'

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
  const known = book.known.filter(({ isOfSquad }) => isOfSquad)
  const changes = await listKeepsChanges(
    tx,
    known.map(({ id }) => id),
  )
  // A log has one word on who may keep goal, that of its last day; the book's is held against it as of the same day.
  const day = lastDayOf(log.value) ?? book.today
  const plan = planSeasonLog(log.value, {
    players: asOf(known, { changes, day }),
    themes: await listThemes(tx),
    sessions: await loadKnownSessions(tx, book.squad.id),
    seasons: book.seasons,
  })
  return plan.ok ? accept({ log: log.value, plan: plan.value }) : plan
}
