import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { inClub } from '#data/in-club'
import type { Session } from '#data/sessions'
import { getSessionOfSquad } from '#server/session-of-squad'
import type { SquadId } from '#squad/squad'

/** Whether a practice or a match is to be written. @throws AppError `notAllowed` or `notFound`. */
export async function kindToWrite(
  viewer: Viewer,
  at: { readonly squadId: SquadId; readonly sessionId: string },
): Promise<Session['kind']> {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'writeSession', { kind: 'squad', squadId: at.squadId })
    return (await getSessionOfSquad(tx, at)).kind
  })
}
