import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { listClosedDays, recordClosedDays, removeClosedDays } from '#data/closed-days'
import { lockClub } from '#data/clubs'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { getSquad } from '#data/squads'
import { type Done, saved } from '#server/action'
import type { ClosedDaysInput, ClubClosedDaysInput } from '#server/weeks-input'
import type { SquadId } from '#squad/squad'

type Answer = Promise<Result<Done, Problem>>

/** More than ten years of holidays. */
const mostSpans = 200

/** Days without practice of a squad. @throws AppError `notAllowed` or `notFound`. */
export async function addClosedDaysOf(
  viewer: Viewer,
  { squadId, ...span }: ClosedDaysInput,
  now = new Date(),
): Answer {
  demand(viewer, 'writeSession', { kind: 'squad', squadId })
  return add(viewer, { squadId, ...span }, now)
}

/** Days without practice of the whole club. @throws AppError `notAllowed`. */
export async function addClubClosedDaysOf(
  viewer: Viewer,
  span: ClubClosedDaysInput,
  now = new Date(),
): Answer {
  demand(viewer, 'arrangeClub', { kind: 'club' })
  return add(viewer, { squadId: null, ...span }, now)
}

type Span = ClubClosedDaysInput & { readonly squadId: SquadId | null }

async function add(viewer: Viewer, { squadId, firstDay, lastDay, name }: Span, now: Date): Answer {
  return inClub(viewer.clubId, async (tx) => {
    await lockClub(tx)
    if (squadId) await getSquad(tx, squadId)
    const before = await listClosedDays(tx, { squadId })
    const own = before.filter((one) => one.squadId === squadId)
    if (own.some((one) => one.firstDay === firstDay && one.lastDay === lastDay))
      return refuse({ path: 'firstDay', message: 'these days stand in the list already' })
    if (own.length >= mostSpans)
      return refuse({ path: '', message: `${mostSpans} lines at most fit here. Take out old ones first.` })
    const id = newId()
    await recordClosedDays(tx, { id, squadId, firstDay, lastDay, name })
    const by = { personId: viewer.personId, at: now }
    await recordAudit(tx, {
      action: 'addClosedDays',
      objectKind: squadId ? 'squad' : 'club',
      objectId: squadId ?? viewer.clubId,
      detail: { firstDay, lastDay },
      by,
    })
    return saved(
      `${name}: no practice is planned on these days. Practices that stand there stay in the list.`,
    )
  })
}

/** Takes them out again: of a squad. @throws AppError `notAllowed`. */
export async function removeClosedDaysOf(
  viewer: Viewer,
  { squadId, closedId }: { readonly squadId: SquadId; readonly closedId: string },
  now = new Date(),
): Answer {
  demand(viewer, 'writeSession', { kind: 'squad', squadId })
  return remove(viewer, { squadId, closedId }, now)
}

/** The same of the whole club. @throws AppError `notAllowed`. */
export async function removeClubClosedDaysOf(
  viewer: Viewer,
  { closedId }: { readonly closedId: string },
  now = new Date(),
): Answer {
  demand(viewer, 'arrangeClub', { kind: 'club' })
  return remove(viewer, { squadId: null, closedId }, now)
}

async function remove(
  viewer: Viewer,
  { squadId, closedId }: { readonly squadId: SquadId | null; readonly closedId: string },
  now: Date,
): Answer {
  return inClub(viewer.clubId, async (tx) => {
    if (!(await removeClosedDays(tx, { id: closedId, squadId })))
      return refuse({ path: '', message: 'These days are not in the list any more. Reload the page.' })
    const by = { personId: viewer.personId, at: now }
    await recordAudit(tx, {
      action: 'removeClosedDays',
      objectKind: squadId ? 'squad' : 'club',
      objectId: squadId ?? viewer.clubId,
      by,
    })
    return saved('Taken out: practices may be planned on these days again.')
  })
}
