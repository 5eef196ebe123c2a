import 'server-only'
import type { Day } from '#common/time'
import { recordAudit } from '#data/audit'
import { forgetGuestNames } from '#data/guests'
import type { ClubTx } from '#data/in-club'

/**
 * Takes away the names of guests whose days are over. Called where a club's pages are sure to pass, so that no clockwork
 * beside the server is needed; it writes only on the few days when there is something to take away.
 */
export async function forgetGuestsWhenDue(tx: ClubTx, { today }: { readonly today: Day }): Promise<void> {
  const names = await forgetGuestNames(tx, today)
  if (names === 0) return
  const by = { personId: null, at: new Date() }
  const detail = { names, today }
  await recordAudit(tx, { action: 'forgetGuestNames', objectKind: 'club', objectId: tx.clubId, detail, by })
}
