import 'server-only'
import { recordAudit } from '#data/audit'
import type { Author } from '#data/author'
import { type ErasureCause, eraseChild } from '#data/erasures'
import type { ClubTx } from '#data/in-club'
import { noteErasure } from '#server/erased-file'
import type { PlayerId } from '#squad/player'

/**
 * Erases a child, writes that it was done, and notes it outside of the database last: if that fails, nothing was done.
 * False: it was erased before.
 */
export async function eraseChildNow(
  tx: ClubTx,
  { playerId, cause, by }: { readonly playerId: PlayerId; readonly cause: ErasureCause; readonly by: Author },
): Promise<boolean> {
  if (!(await eraseChild(tx, { playerId, cause, by }))) return false
  const detail = { cause }
  await recordAudit(tx, { action: 'eraseChild', objectKind: 'player', objectId: playerId, detail, by })
  await noteErasure({ clubId: tx.clubId, playerId, erasedAt: by.at, cause })
  return true
}
