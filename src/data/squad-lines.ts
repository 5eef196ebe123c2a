import 'server-only'
import type { Day } from '#common/time'
import { dateOf, dayOf, dayOrNull } from '#data/days'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { SquadLineKind } from '#data/squad-coaches'
import type { SquadId } from '#squad/squad'

/** One stretch of days in which a person coaches, covers or helps with a squad. */
export type SquadLine = {
  readonly id: string
  readonly squadId: SquadId
  readonly squadName: string
  readonly kind: SquadLineKind
  readonly firstDay: Day
  readonly lastDay: Day | null
}

/** All of a person's, the newest first. */
export async function listSquadLines(tx: ClubTx, personId: string): Promise<readonly SquadLine[]> {
  if (!isId(personId)) return []
  const rows = await tx.db.squadCoach.findMany({
    where: { clubId: tx.clubId, personId },
    select: {
      id: true,
      squadId: true,
      kind: true,
      firstDay: true,
      lastDay: true,
      squad: { select: { name: true } },
    },
    orderBy: [{ firstDay: 'desc' }, { id: 'desc' }],
  })
  return rows.map(({ squad, firstDay, lastDay, ...row }) => ({
    ...row,
    squadName: squad.name,
    firstDay: dayOf(firstDay),
    lastDay: dayOrNull(lastDay),
  }))
}

export async function endSquadLine(
  tx: ClubTx,
  { lineId, lastDay }: { readonly lineId: string; readonly lastDay: Day },
): Promise<void> {
  await tx.db.squadCoach.update({
    where: { clubId_id: { clubId: tx.clubId, id: lineId } },
    data: { lastDay: dateOf(lastDay) },
  })
}
