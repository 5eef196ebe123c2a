import 'server-only'
import { demand } from '#access/demand'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import type { ClubTx } from '#data/in-club'
import { listPlayers } from '#data/players'
import { getSquad } from '#data/squads'
import { namesApart } from '#fairness/book/names-apart'
import { shortNames } from '#planning/short-names'
import { getSessionOfSquad } from '#server/session-of-squad'
import type { PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'

/** What stands at the head of a printed plan, of a practice or a match. @throws AppError `notAllowed` or `notFound`. */
export async function loadPrintedHead(
  tx: ClubTx,
  viewer: Viewer,
  { squadId, sessionId }: { readonly squadId: SquadId; readonly sessionId: string },
) {
  demand(viewer, 'seeSquad', { kind: 'squad', squadId })
  const { day, startsAt, title, place } = await getSessionOfSquad(tx, { squadId, sessionId })
  const { name: squadName } = await getSquad(tx, squadId)
  return {
    squadName,
    day,
    startsAt,
    title,
    place,
    mayPlan: may(viewer, 'planPractice', { kind: 'squad', squadId }),
  }
}

/** How players are called on paper: no more of a name than tells them apart. */
export async function loadPrintedNames(
  tx: ClubTx,
  playerIds: readonly PlayerId[],
): Promise<(playerId: PlayerId) => string> {
  const names = shortNames(namesApart(await listPlayers(tx, playerIds)))
  return (playerId) => names.get(playerId) ?? 'Guest'
}
