import 'server-only'
import { AppError } from '#common/app-error'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { Squad, SquadId } from '#squad/squad'

const columns = { id: true, name: true, ageLimit: true } as const

/** In order of age, then name; never by a figure. */
export async function listSquads(tx: ClubTx): Promise<readonly Squad[]> {
  return tx.db.squad.findMany({
    where: { clubId: tx.clubId },
    select: columns,
    orderBy: [{ ageLimit: 'asc' }, { name: 'asc' }, { id: 'asc' }],
  })
}

export async function findSquad(tx: ClubTx, squadId: SquadId): Promise<Squad | null> {
  if (!isId(squadId)) return null
  return tx.db.squad.findUnique({ where: { clubId_id: { clubId: tx.clubId, id: squadId } }, select: columns })
}

/** @throws AppError `notFound`. */
export async function getSquad(tx: ClubTx, squadId: SquadId): Promise<Squad> {
  const squad = await findSquad(tx, squadId)
  if (!squad) throw new AppError('notFound', `no squad ${squadId}`)
  return squad
}

export async function recordSquads(tx: ClubTx, squads: readonly Squad[]): Promise<void> {
  await tx.db.squad.createMany({
    data: squads.map(({ id, name, ageLimit }) => ({ clubId: tx.clubId, id, name, ageLimit })),
  })
}

export async function changeSquad(tx: ClubTx, { id, name, ageLimit }: Squad): Promise<void> {
  await tx.db.squad.update({
    where: { clubId_id: { clubId: tx.clubId, id } },
    data: { name, ageLimit },
    select: { id: true },
  })
}
