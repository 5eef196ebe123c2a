import 'server-only'
import { AppError } from '#common/app-error'
import type { ClubTx } from '#data/in-club'
import { getSession, type Session } from '#data/sessions'
import type { SquadId } from '#squad/squad'

/** @throws AppError `notFound` when it is no session of the squad. */
export async function getSessionOfSquad(
  tx: ClubTx,
  { squadId, sessionId }: { readonly squadId: SquadId; readonly sessionId: string },
): Promise<Session> {
  const session = await getSession(tx, sessionId)
  if (session.squadId !== squadId) throw new AppError('notFound', `session ${sessionId} is of another squad`)
  return session
}
