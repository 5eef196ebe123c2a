import 'server-only'
import type { Day } from '#common/time'
import { dateOf, dayOf } from '#data/days'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { PlayerId } from '#squad/player'
import type { PlayerAway } from '#squad/player-away'

/** Days away of these players that share a day with a span (both its days included), in order of days. */
export async function listAway(
  tx: ClubTx,
  { playerIds, from, to }: { readonly playerIds: readonly PlayerId[]; readonly from: Day; readonly to: Day },
): Promise<readonly PlayerAway[]> {
  const rows = await tx.db.playerAway.findMany({
    where: {
      clubId: tx.clubId,
      playerId: { in: playerIds.filter(isId) },
      firstDay: { lte: dateOf(to) },
      lastDay: { gte: dateOf(from) },
    },
    select: { id: true, playerId: true, firstDay: true, lastDay: true },
    orderBy: [{ firstDay: 'asc' }, { lastDay: 'asc' }, { id: 'asc' }],
  })
  return rows.map((row) => ({ ...row, firstDay: dayOf(row.firstDay), lastDay: dayOf(row.lastDay) }))
}

export async function recordAway(tx: ClubTx, away: PlayerAway): Promise<void> {
  const { id, playerId, firstDay, lastDay } = away
  await tx.db.playerAway.createMany({
    data: [{ clubId: tx.clubId, id, playerId, firstDay: dateOf(firstDay), lastDay: dateOf(lastDay) }],
  })
}

/** Returns whether they were there. */
export async function removeAway(
  tx: ClubTx,
  { id, playerId }: Pick<PlayerAway, 'id' | 'playerId'>,
): Promise<boolean> {
  if (!isId(id)) return false
  const { count } = await tx.db.playerAway.deleteMany({ where: { clubId: tx.clubId, id, playerId } })
  return count > 0
}
