import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { getClub } from '#data/clubs'
import type { ClubTx } from '#data/in-club'
import { findSeasonOn } from '#data/seasons'
import { lockSession, type Session } from '#data/sessions'
import { getVersion } from '#data/written-history'
import { rebuildSession } from '#server/rebuild'
import { refreshFlags } from '#server/refresh-flags'
import { getSessionOfSquad } from '#server/session-of-squad'
import { todayOf } from '#server/today'
import type { SquadId } from '#squad/squad'

/**
 * Opens a session of the viewer's squad for writing: nobody else can write it until the transaction ends.
 * @throws AppError `notAllowed`; `notFound` when it is no session of the squad; `conflict` when something was written
 * since the page was opened.
 */
export async function openForWriting(
  tx: ClubTx,
  viewer: Viewer,
  at: { readonly squadId: SquadId; readonly sessionId: string; readonly version?: string },
): Promise<Session> {
  demand(viewer, 'writeSession', { kind: 'squad', squadId: at.squadId })
  await lockSession(tx, at.sessionId)
  const session = await getSessionOfSquad(tx, at)
  if (at.version !== undefined && at.version !== (await getVersion(tx, session.id)))
    throw new AppError('conflict', `session ${session.id} was written meanwhile`)
  return session
}

/** Brings the book up to date after a session was written: its account, and what the squad's flags say now. */
export async function bringBookUpToDate(
  tx: ClubTx,
  session: Pick<Session, 'id' | 'squadId' | 'day'>,
  now: Date,
): Promise<void> {
  await rebuildSession(tx, session.id)
  const today = todayOf(await getClub(tx), now)
  const season = await findSeasonOn(tx, session.day)
  if (season) await refreshFlags(tx, { squadId: session.squadId, seasonId: season.id, today, now })
}
