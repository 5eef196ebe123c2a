import 'server-only'
import type { Day } from '#common/time'
import { recordAudit } from '#data/audit'
import type { ClubTx } from '#data/in-club'
import { findMatchPlan, findPlan, forgetInPlan, listPlansToForget } from '#data/session-plans'
import { withoutMatchDay } from '#lineup/draft/without-match-day'
import { lastDayForgotten, withoutToday } from '#planning/forget-today'

/** Takes out of a practice's plan what was set for its day alone, and what was agreed: it has been played. */
export async function forgetTodayOf(tx: ClubTx, sessionId: string, at: Date): Promise<void> {
  const stored = await findPlan(tx, sessionId)
  if (stored) await forgetInPlan(tx, { ...stored, plan: withoutToday(stored.plan), at })
}

/** The same of a match's plan, with its pairs and what was noted of lines. */
export async function forgetMatchDayOf(tx: ClubTx, sessionId: string, at: Date): Promise<void> {
  const stored = await findMatchPlan(tx, sessionId)
  if (stored) await forgetInPlan(tx, { ...stored, plan: withoutMatchDay(stored.plan), at })
}

/**
 * The same for every plan whose days are over: written into the book before today, or 28 days old. Called where a club's
 * pages are sure to pass; it writes only when there is something to take away.
 */
export async function forgetTodayWhenDue(tx: ClubTx, { today }: { readonly today: Day }): Promise<void> {
  const due = await listPlansToForget(tx, { before: today, lastDay: lastDayForgotten(today) })
  if (due.length === 0) return
  const at = new Date()
  for (const { id, kind } of due) await (kind === 'match' ? forgetMatchDayOf : forgetTodayOf)(tx, id, at)
  const by = { personId: null, at }
  const detail = { plans: due.length, today }
  await recordAudit(tx, { action: 'forgetToday', objectKind: 'club', objectId: tx.clubId, detail, by })
}
