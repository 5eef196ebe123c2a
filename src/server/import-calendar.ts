import 'server-only'
import { recordAudit } from '#data/audit'
import type { Author } from '#data/author'
import { newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { changeSession, type NewSession, recordSessions } from '#data/sessions'
import type { CalendarPlan } from '#exchange/calendar/calendar-plan'
import { afterImport } from '#server/after-import'
import type { ImportBook } from '#server/import-book'

export type CalendarImported = { readonly newSessions: number; readonly changedSessions: number }

/** Writes a calendar that is ready: sessions to be held, or held and not written; and what changed on those of the book. */
export async function saveCalendar(
  tx: ClubTx,
  { plan, book, by }: { readonly plan: CalendarPlan; readonly book: ImportBook; readonly by: Author },
): Promise<CalendarImported> {
  const squadId = book.squad.id
  const entered = newSessionsOf(plan, squadId)
  const changed = plan.flatMap(({ outcome }) =>
    outcome.kind === 'known' && Object.keys(outcome.change).length > 0 ? [outcome] : [],
  )
  await recordSessions(tx, entered)
  for (const { session, change } of changed) await changeSession(tx, session.id, change)
  const imported = { newSessions: entered.length, changedSessions: changed.length }
  await recordAudit(tx, {
    action: 'importCalendar',
    objectKind: 'squad',
    objectId: squadId,
    detail: imported,
    by,
  })
  const days = [
    ...entered,
    ...changed.flatMap(({ session, change }) => [session, { day: change.day ?? session.day }]),
  ]
  await afterImport(tx, {
    squadId,
    from: days.map(({ day }) => day).sort()[0] ?? book.today,
    keepingChanged: [],
    today: book.today,
    now: by.at,
  })
  return imported
}

function newSessionsOf(plan: CalendarPlan, squadId: string): readonly NewSession[] {
  return plan.flatMap(({ outcome }): NewSession[] => {
    if (outcome.kind !== 'new') return []
    const { entry, notes } = outcome
    const { day, kind, title, startsAt, place, lengthSeconds, code } = entry
    const goals = notes.includes('goalsNotCounted') ? null : entry.goals
    const frame = { periods: null, designId: null, ledById: null }
    return [{ id: newId(), squadId, day, kind, title, startsAt, place, lengthSeconds, code, goals, ...frame }]
  })
}
