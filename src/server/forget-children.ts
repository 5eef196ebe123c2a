import 'server-only'
import type { Day } from '#common/time'
import { getClubRights } from '#data/club-rights'
import type { ClubTx } from '#data/in-club'
import { listChildDays } from '#data/retention-days'
import { listSeasons } from '#data/seasons'
import { retentionOf } from '#rights/retention'
import { eraseChildNow } from '#server/erase-child'

/** Children erased in one go; the rest follow when the page is opened next. */
const mostAtOnce = 50

/**
 * Erases the children whose time is over, where the administrator has set how long that is. Called where a club's pages
 * are sure to pass, and at every start by src/boot; it writes only on the few days when there is somebody to forget.
 */
export async function forgetChildrenWhenDue(
  tx: ClubTx,
  { today, now = new Date() }: { readonly today: Day; readonly now?: Date },
): Promise<number> {
  const { retentionMonths: months } = await getClubRights(tx)
  if (months === null) return 0
  const days = await listChildDays(tx)
  const { over } = retentionOf(days, { seasons: await listSeasons(tx), months, today })
  const by = { personId: null, at: now }
  let erased = 0
  for (const { playerId } of over.slice(0, mostAtOnce))
    if (await eraseChildNow(tx, { playerId, cause: 'retention', by })) erased += 1
  return erased
}
