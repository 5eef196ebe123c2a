import 'server-only'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'

/** Whether a squad's families are told time and place of what comes; false for a squad that is not there. */
export async function findShowsComing(tx: ClubTx, squadId: SquadId): Promise<boolean> {
  if (!isId(squadId)) return false
  const row = await tx.db.squad.findUnique({
    where: { clubId_id: { clubId: tx.clubId, id: squadId } },
    select: { showsComing: true },
  })
  return row?.showsComing ?? false
}

export async function changeShowsComing(
  tx: ClubTx,
  { squadId, showsComing }: { readonly squadId: SquadId; readonly showsComing: boolean },
): Promise<void> {
  await tx.db.squad.update({
    where: { clubId_id: { clubId: tx.clubId, id: squadId } },
    data: { showsComing },
    select: { id: true },
  })
}

/** Whether time and place are withheld from this person, for this child. */
export async function findWithheld(
  tx: ClubTx,
  { personId, playerId }: { readonly personId: string; readonly playerId: PlayerId },
): Promise<boolean> {
  const row = await tx.db.guardianship.findFirst({
    where: { clubId: tx.clubId, personId, playerId },
    select: { withholdsComing: true },
  })
  return row?.withholdsComing ?? true
}

/** Of these squads those whose families are told time and place of what comes. */
export async function listShowingSquadIds(
  tx: ClubTx,
  squadIds: readonly SquadId[],
): Promise<readonly SquadId[]> {
  const rows = await tx.db.squad.findMany({
    where: { clubId: tx.clubId, id: { in: squadIds.filter(isId) }, showsComing: true },
    select: { id: true },
  })
  return rows.map(({ id }) => id)
}
