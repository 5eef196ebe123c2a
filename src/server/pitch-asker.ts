import 'server-only'
import { cookies } from 'next/headers'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { daysLater } from '#common/days-later'
import { accept, type Result, refuse } from '#common/result'
import type { Day } from '#common/time'
import { findHelperPass, type HelperPass } from '#data/helper-passes'
import type { ClubTx } from '#data/in-club'
import type { PitchHand } from '#data/pitch-events'
import { getSession, type Session } from '#data/sessions'
import { loadClubDay } from '#server/club-day'
import { type PassPlace, passOfSigned } from '#server/helper-secret'
import { findSignedIn } from '#server/viewer'

/** Who holds the phone: a coach; somebody of the club who helps; or whoever holds a pass for one practice. */
export type PitchAsker =
  | { readonly kind: 'coach'; readonly viewer: Viewer }
  | { readonly kind: 'helper'; readonly viewer: Viewer; readonly pass: null }
  | { readonly kind: 'helper'; readonly viewer: null; readonly pass: PassPlace }

/** Why a whole request is refused, and with which status of HTTP. */
export type PitchRefused = { readonly status: 401 | 403 | 404 | 409; readonly why: string }

export const helperCookie = 'turnbook-helper'

/** Everyone the request could come from, the most trusted first: a coach may also hold a helper's pass. */
export async function listPitchAskers(): Promise<readonly PitchAsker[]> {
  const viewer = await findSignedIn()
  const cookie = (await cookies()).get(helperCookie)?.value
  const pass = cookie ? passOfSigned(cookie) : null
  return [
    ...(viewer ? [asPerson(viewer)] : []),
    ...(pass ? [{ kind: 'helper', viewer: null, pass } as const] : []),
  ]
}

/** Somebody of the club, as far as its role goes at the pitch. */
export function asPerson(viewer: Viewer): PitchAsker {
  return viewer.role === 'helper' ? { kind: 'helper', viewer, pass: null } : { kind: 'coach', viewer }
}

export function clubIdOf(asker: PitchAsker): string {
  return asker.viewer ? asker.viewer.clubId : asker.pass.clubId
}

/** Under whom what the asker taps is kept. */
export function handOf(asker: PitchAsker): Omit<PitchHand, 'at'> {
  return asker.viewer
    ? { personId: asker.viewer.personId, helperPassId: null }
    : { personId: null, helperPassId: asker.pass.passId }
}

/** Whether a pass opens the practice at this moment. */
export function isPassGood(
  pass: HelperPass,
  at: { readonly sessionId: string; readonly now: Date },
): boolean {
  return pass.sessionId === at.sessionId && pass.revokedAt === null && pass.expiresAt > at.now
}

/** Whether a practice is one that somebody who helps the squad may tap in: today's, and yesterday's for what was tapped without a signal. */
export function isHelpedWith(session: Pick<Session, 'day'>, today: Day): boolean {
  return session.day === today || session.day === daysLater(today, -1)
}

/**
 * The practice or match for whoever asks; a helper's pass is read anew, so that taking it back bites at the next
 * request. Refused when it was cancelled.
 * @throws AppError `notFound`, or `notAllowed` when it is not the asker's.
 */
export async function openPitch(
  tx: ClubTx,
  asker: PitchAsker,
  at: { readonly sessionId: string; readonly now: Date },
): Promise<Result<Session, PitchRefused>> {
  const session = await getSession(tx, at.sessionId)
  await demandPitch(tx, asker, { session, now: at.now })
  if (session.isCancelled)
    return refuse({
      status: 409,
      why: `This ${session.kind} was cancelled: nothing can be written of it. Enter a new one if it was held after all.`,
    })
  return accept(session)
}

async function demandPitch(
  tx: ClubTx,
  asker: PitchAsker,
  { session, now }: { readonly session: Session; readonly now: Date },
): Promise<void> {
  if (asker.viewer) {
    demand(asker.viewer, 'tapAtPitch', { kind: 'squad', squadId: session.squadId })
    if (asker.kind === 'coach' || isHelpedWith(session, (await loadClubDay(tx, now)).today)) return
    throw new AppError('notAllowed', `session ${session.id} is not of today`)
  }
  const { passId } = asker.pass
  const pass = await findHelperPass(tx, passId)
  if (!pass || !isPassGood(pass, { sessionId: session.id, now }))
    throw new AppError('notAllowed', `pass ${passId} does not open session ${session.id}`)
}
