import 'server-only'
import { dayOf, dayOrNull } from '#data/days'
import type { ClubTx } from '#data/in-club'
import type { ChildDays } from '#rights/retention'

/** From when to when each child of the club that still has a name belonged to a squad. */
export async function listChildDays(tx: ClubTx): Promise<readonly ChildDays[]> {
  const rows = await tx.db.squadMembership.findMany({
    where: { clubId: tx.clubId, player: { erasedAt: null } },
    select: { playerId: true, firstDay: true, lastDay: true },
    orderBy: [{ playerId: 'asc' }, { firstDay: 'asc' }],
  })
  return rows.map(({ playerId, firstDay, lastDay }) => ({
    playerId,
    firstDay: dayOf(firstDay),
    lastDay: dayOrNull(lastDay),
  }))
}
