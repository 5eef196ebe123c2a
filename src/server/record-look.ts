import 'server-only'
import type { LookedPage } from '#access/deed-words'
import type { Viewer } from '#access/viewer'
import { recordAudit } from '#data/audit'
import type { ClubTx } from '#data/in-club'
import type { PlayerId } from '#squad/player'

/** Writes that an adult looked at a page of one child, in the transaction that shows it. */
export async function recordLook(
  tx: ClubTx,
  viewer: Viewer,
  { page, playerId }: { readonly page: LookedPage; readonly playerId: PlayerId },
): Promise<void> {
  const by = { personId: viewer.personId, at: new Date() }
  await recordAudit(tx, { action: 'look', objectKind: 'player', objectId: playerId, detail: { page }, by })
}
