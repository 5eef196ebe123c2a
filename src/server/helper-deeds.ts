import 'server-only'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import type { Day } from '#common/time'
import { recordAudit } from '#data/audit'
import { listHelperPasses, recordHelperPass, revokeHelperPass } from '#data/helper-passes'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import type { Session } from '#data/sessions'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import { hashOfSecret, secretOfPass } from '#server/helper-secret'
import { isPassGood } from '#server/pitch-asker'
import { openForWriting } from '#server/session-writing'
import { midnightAfter } from '#server/today'
import type { SquadId } from '#squad/squad'

type SessionPlace = { readonly squadId: SquadId; readonly sessionId: string }

/** Good at one time for one practice or match; more hands than this do not help. */
const mostPasses = 6

/** Why nobody can be let in to help; null when somebody can. A code holds until midnight, so it is made on the day. */
export function whyNoHelper(
  session: Pick<Session, 'kind' | 'day' | 'isCancelled'>,
  today: Day,
): string | null {
  if (session.isCancelled) return `This ${session.kind} was cancelled.`
  if (session.day > today)
    return `A code holds until midnight: make it on the day of the ${session.kind}, at the pitch.`
  if (session.day < today) return `This ${session.kind} is over: nobody can join it any more.`
  return null
}

/** Lets one helper join one practice or match until midnight in the club. @throws AppError `notAllowed` or `notFound`. */
export async function makePassOf(
  viewer: Viewer,
  at: SessionPlace,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  return inClub(viewer.clubId, async (tx) => {
    const session = await openForWriting(tx, viewer, at)
    const { club, today } = await loadClubDay(tx, now)
    const why = whyNoHelper(session, today)
    if (why) return refuse({ path: '', message: why })
    const good = (await listHelperPasses(tx, session.id)).filter((pass) => isPassGood(pass, { ...at, now }))
    if (good.length >= mostPasses) {
      const message = `${mostPasses} codes are good for this ${session.kind} already. Take one of them back first.`
      return refuse({ path: '', message })
    }
    const passId = newId()
    const by = { personId: viewer.personId, at: now }
    await recordHelperPass(tx, {
      id: passId,
      sessionId: session.id,
      secretHash: hashOfSecret(secretOfPass({ clubId: viewer.clubId, passId })),
      expiresAt: midnightAfter(club.timeZone, now),
      madeById: viewer.personId,
      madeAt: now,
    })
    const detail = { passId }
    await recordAudit(tx, {
      action: 'makeHelperPass',
      objectKind: 'session',
      objectId: session.id,
      detail,
      by,
    })
    return saved('Let the helper scan the code below.')
  })
}

/** Takes a pass back: from the next request on it opens nothing. @throws AppError `notAllowed` or `notFound`. */
export async function takeBackPassOf(
  viewer: Viewer,
  { passId, ...at }: SessionPlace & { readonly passId: string },
  now = new Date(),
): Promise<Result<Done, Problem>> {
  return inClub(viewer.clubId, async (tx) => {
    const session = await openForWriting(tx, viewer, at)
    const isRevoked = await revokeHelperPass(tx, { sessionId: session.id, passId, at: now })
    if (!isRevoked) return refuse({ path: '', message: 'This code was taken back already.' })
    const by = { personId: viewer.personId, at: now }
    const detail = { passId }
    await recordAudit(tx, {
      action: 'takeBackHelperPass',
      objectKind: 'session',
      objectId: session.id,
      detail,
      by,
    })
    return saved('Taken back. What the helper tapped so far stays.')
  })
}
