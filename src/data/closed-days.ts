import 'server-only'
import { dateOf, dayOf } from '#data/days'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { ClosedDays } from '#squad/closed-days'
import type { SquadId } from '#squad/squad'

/** Days without practice of a squad, those of the whole club among them; without a squad the club's alone. In order of days. */
export async function listClosedDays(
  tx: ClubTx,
  { squadId }: { readonly squadId: SquadId | null },
): Promise<readonly ClosedDays[]> {
  const rows = await tx.db.closedDays.findMany({
    where: {
      clubId: tx.clubId,
      OR: [{ squadId: null }, ...(squadId !== null && isId(squadId) ? [{ squadId }] : [])],
    },
    select: { id: true, squadId: true, firstDay: true, lastDay: true, name: true },
    orderBy: [{ firstDay: 'asc' }, { lastDay: 'asc' }, { id: 'asc' }],
  })
  return rows.map((row) => ({ ...row, firstDay: dayOf(row.firstDay), lastDay: dayOf(row.lastDay) }))
}

export async function recordClosedDays(tx: ClubTx, closed: ClosedDays): Promise<void> {
  const { id, squadId, firstDay, lastDay, name } = closed
  await tx.db.closedDays.createMany({
    data: [{ clubId: tx.clubId, id, squadId, firstDay: dateOf(firstDay), lastDay: dateOf(lastDay), name }],
  })
}

/** Of a squad, or (null) of the whole club. Returns whether they were there. */
export async function removeClosedDays(
  tx: ClubTx,
  { id, squadId }: Pick<ClosedDays, 'id' | 'squadId'>,
): Promise<boolean> {
  if (!isId(id)) return false
  const { count } = await tx.db.closedDays.deleteMany({ where: { clubId: tx.clubId, id, squadId } })
  return count > 0
}
