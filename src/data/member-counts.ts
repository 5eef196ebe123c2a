import 'server-only'
import type { Day } from '#common/time'
import { dateOf } from '#data/days'
import type { ClubTx } from '#data/in-club'
import type { SquadId } from '#squad/squad'

/** How many belong to each squad on a day; squads without any are left out. */
export async function countMembersOn(tx: ClubTx, day: Day): Promise<ReadonlyMap<SquadId, number>> {
  const date = dateOf(day)
  const rows = await tx.db.squadMembership.groupBy({
    by: ['squadId'],
    where: {
      clubId: tx.clubId,
      firstDay: { lte: date },
      OR: [{ lastDay: null }, { lastDay: { gte: date } }],
    },
    _count: true,
  })
  return new Map(rows.map(({ squadId, _count }) => [squadId, _count]))
}
