import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { recordSessions } from '#data/sessions'
import { lockSquad } from '#data/squad-lock'
import { type Done, goTo } from '#server/action'
import { loadClubDay } from '#server/club-day'
import { findWeeklyDays } from '#server/weekly-days'
import type { WeeklyInput } from '#server/weeks-input'

/**
 * A practice in every week, all that were shown or none: where something has come between, nothing is added.
 * @throws AppError `notAllowed` or `notFound`.
 */
export async function enterWeeklyOf(
  viewer: Viewer,
  { squadId, days, ...asked }: WeeklyInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  demand(viewer, 'writeSession', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    await lockSquad(tx, squadId)
    const { today } = await loadClubDay(tx, now)
    const found = await findWeeklyDays(tx, { squadId, today, asked })
    if (!found.ok) return found
    const { add } = found.value
    if (add.length === 0)
      return refuse({ path: '', message: 'There is nothing to add: every one of these days is taken.' })
    if (add.join() !== days)
      return refuse({
        path: '',
        message: 'Something has changed since these days were shown, and nothing was added. Show them again.',
      })
    await recordSessions(
      tx,
      add.map((day) => ({
        id: newId(),
        squadId,
        kind: 'practice' as const,
        day,
        title: '',
        startsAt: asked.startsAt,
        place: asked.place,
        lengthSeconds: asked.lengthMinutes * 60,
        periods: null,
        designId: null,
        ledById: viewer.personId,
        code: null,
      })),
    )
    const by = { personId: viewer.personId, at: now }
    const detail = { practices: add.length, firstDay: add[0] ?? '', lastDay: add.at(-1) ?? '' }
    await recordAudit(tx, { action: 'enterWeekly', objectKind: 'squad', objectId: squadId, detail, by })
    return goTo(`/squads/${squadId}/sessions`)
  })
}
