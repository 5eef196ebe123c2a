import 'server-only'
import type { ClubTx } from '#data/in-club'
import type { Ground } from '#squad/ground'

/** The club's grounds whose size is known, by name. */
export async function listGroundSizes(tx: ClubTx): Promise<readonly Ground[]> {
  return tx.db.groundSize.findMany({
    where: { clubId: tx.clubId },
    select: { place: true, lengthM: true, widthM: true },
    orderBy: { place: 'asc' },
  })
}

/** Says how large a ground is, known before or not. */
export async function setGroundSize(tx: ClubTx, { place, lengthM, widthM }: Ground): Promise<void> {
  await tx.db.groundSize.upsert({
    where: { clubId_place: { clubId: tx.clubId, place } },
    create: { clubId: tx.clubId, place, lengthM, widthM },
    update: { lengthM, widthM },
    select: { place: true },
  })
}

/** Returns whether it was there. */
export async function removeGroundSize(tx: ClubTx, place: string): Promise<boolean> {
  const { count } = await tx.db.groundSize.deleteMany({ where: { clubId: tx.clubId, place } })
  return count > 0
}
