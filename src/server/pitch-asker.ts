import 'server-only'
import { cookies } from 'next/headers'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { accept, type Result, refuse } from '#common/result'
import { findHelperPass, type HelperPass } from '#data/helper-passes'
import type { ClubTx } from '#data/in-club'
import type { PitchHand } from '#data/pitch-events'
import { getSession, type Session } from '#data/sessions'
import { type PassPlace, passOfSigned } from '#server/helper-secret'
import { findSignedIn } from '#server/viewer'

/** Who holds the phone: somebody of the club, or a helper with a pass for one practice. */
export type PitchAsker =
  | { readonly kind: 'coach'; readonly viewer: Viewer }
  | ({ readonly kind: 'helper' } & PassPlace)

/** Why a whole request is refused, and with which status of HTTP. */
export type PitchRefused = { readonly status: 401 | 403 | 404 | 409; readonly why: string }

export const helperCookie = 'turnbook-helper'

/** Everyone the request could come from, the most trusted first: a coach may also hold a helper's pass. */
export async function listPitchAskers(): Promise<readonly PitchAsker[]> {
  const viewer = await findSignedIn()
  const cookie = (await cookies()).get(helperCookie)?.value
  const pass = cookie ? passOfSigned(cookie) : null
  return [
    ...(viewer ? [{ kind: 'coach', viewer } as const] : []),
    ...(pass ? [{ kind: 'helper', ...pass } as const] : []),
  ]
}

export function clubIdOf(asker: PitchAsker): string {
  return asker.kind === 'coach' ? asker.viewer.clubId : asker.clubId
}

/** Under whom what the asker taps is kept. */
export function handOf(asker: PitchAsker): Omit<PitchHand, 'at'> {
  return asker.kind === 'coach'
    ? { personId: asker.viewer.personId, helperPassId: null }
    : { personId: null, helperPassId: asker.passId }
}

/** Whether a pass opens the practice at this moment. */
export function isPassGood(
  pass: HelperPass,
  at: { readonly sessionId: string; readonly now: Date },
): boolean {
  return pass.sessionId === at.sessionId && pass.revokedAt === null && pass.expiresAt > at.now
}

/**
 * The practice for whoever asks; a helper's pass is read anew, so that taking it back bites at the next request.
 * Refused when it is no practice, or was cancelled.
 * @throws AppError `notFound`, or `notAllowed` when it is not the asker's.
 */
export async function openPitch(
  tx: ClubTx,
  asker: PitchAsker,
  at: { readonly sessionId: string; readonly now: Date },
): Promise<Result<Session, PitchRefused>> {
  const session = await getSession(tx, at.sessionId)
  if (asker.kind === 'coach') {
    demand(asker.viewer, 'writeSession', { kind: 'squad', squadId: session.squadId })
  } else {
    const pass = await findHelperPass(tx, asker.passId)
    if (!pass || !isPassGood(pass, at))
      throw new AppError('notAllowed', `pass ${asker.passId} does not open session ${session.id}`)
  }
  if (session.kind !== 'practice')
    return refuse({ status: 409, why: 'This is a match: only practices can be tapped at the pitch.' })
  if (session.isCancelled)
    return refuse({
      status: 409,
      why: 'This practice was cancelled: nothing can be written of it. Enter a new one if it was held after all.',
    })
  return accept(session)
}
