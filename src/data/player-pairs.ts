import 'server-only'
import type { Day } from '#common/time'
import { dateOf, dateOrNull, dayOf, dayOrNull } from '#data/days'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { PlayerPair } from '#planning/player-pair'
import type { SquadId } from '#squad/squad'

/** The pairs of a squad that hold on or after a day, in order of their first day. */
export async function listPairs(
  tx: ClubTx,
  { squadId, from }: { readonly squadId: SquadId; readonly from: Day },
): Promise<readonly PlayerPair[]> {
  if (!isId(squadId)) return []
  const rows = await tx.db.playerPair.findMany({
    where: { clubId: tx.clubId, squadId, OR: [{ lastDay: null }, { lastDay: { gte: dateOf(from) } }] },
    select: {
      id: true,
      squadId: true,
      oneId: true,
      otherId: true,
      kind: true,
      firstDay: true,
      lastDay: true,
    },
    orderBy: [{ firstDay: 'asc' }, { id: 'asc' }],
  })
  return rows.map(({ oneId, otherId, firstDay, lastDay, ...row }) => ({
    ...row,
    playerIds: [oneId, otherId],
    firstDay: dayOf(firstDay),
    lastDay: dayOrNull(lastDay),
  }))
}

export async function recordPair(
  tx: ClubTx,
  { madeById, ...pair }: PlayerPair & { readonly madeById: string | null },
): Promise<void> {
  const { id, squadId, kind, firstDay, lastDay } = pair
  const [oneId, otherId] = pair.playerIds
  await tx.db.playerPair.createMany({
    data: [
      {
        clubId: tx.clubId,
        id,
        squadId,
        oneId,
        otherId,
        kind,
        firstDay: dateOf(firstDay),
        lastDay: dateOrNull(lastDay),
        madeById,
      },
    ],
  })
}

/** The last day of a pair. False when the squad has no such pair. */
export async function endPair(
  tx: ClubTx,
  at: { readonly squadId: SquadId; readonly pairId: string; readonly lastDay: Day },
): Promise<boolean> {
  if (!isId(at.pairId) || !isId(at.squadId)) return false
  const { count } = await tx.db.playerPair.updateMany({
    where: { clubId: tx.clubId, id: at.pairId, squadId: at.squadId },
    data: { lastDay: dateOf(at.lastDay) },
  })
  return count > 0
}
