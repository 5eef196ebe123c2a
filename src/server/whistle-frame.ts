import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { ClubTx } from '#data/in-club'
import type { Session } from '#data/sessions'
import { getVersion } from '#data/written-history'
import { forgetGuestsWhenDue } from '#server/forget-guests'
import { forgetTodayWhenDue } from '#server/forget-today'
import type { TappedMatch } from '#server/match-book'
import { loadFrame } from '#server/page-frame'
import type { TappedPractice } from '#server/pitch-book'
import { getSessionOfSquad } from '#server/session-of-squad'
import { loadSquadSeason, type SquadSeason } from '#server/squad-season'
import { whyNotWritable } from '#server/why-not-writable'
import { takenBackFromOut } from '#squad/out-for-today'
import type { RegisterLine } from '#squad/register'
import type { SquadId } from '#squad/squad'

export type AtWhistle = { readonly squadId: SquadId; readonly sessionId: string; readonly now?: Date }

/** The session whose taps are to be looked at, and its season. @throws AppError `notAllowed` or `notFound`. */
export async function openWhistle(
  tx: ClubTx,
  viewer: Viewer,
  { squadId, sessionId, now = new Date() }: AtWhistle,
): Promise<{ readonly of: SquadSeason; readonly session: Session }> {
  demand(viewer, 'writeSession', { kind: 'squad', squadId })
  const of = await loadSquadSeason(tx, viewer, { squadId, now })
  await forgetGuestsWhenDue(tx, of)
  await forgetTodayWhenDue(tx, of)
  return { of, session: await getSessionOfSquad(tx, { squadId, sessionId }) }
}

/** What the page after the whistle shows around a practice and around a match. */
export async function loadWhistleFrame(
  tx: ClubTx,
  viewer: Viewer,
  at: {
    readonly of: SquadSeason
    readonly session: Session
    readonly tapped: Pick<
      TappedPractice | TappedMatch,
      'cursor' | 'events' | 'lastWrite' | 'typed' | 'before'
    >
    readonly register: readonly RegisterLine[]
  },
) {
  const { of, session, tapped, register } = at
  const { cursor, lastWrite, typed, before } = tapped
  return {
    frame: await loadFrame(tx, viewer, of.squad.id),
    squad: of.squad,
    session,
    timeZone: of.club.timeZone,
    closed: whyNotWritable(session, of.today),
    version: await getVersion(tx, session.id),
    cursor,
    tapCount: tapped.events.length,
    lastWrite,
    tapsSince: lastWrite ? cursor - lastWrite.upTo : 0,
    typed,
    takenBack: takenBackFromOut(before.register, register),
  }
}
