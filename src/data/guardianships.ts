import 'server-only'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { Person } from '#data/people'
import { playerColumns } from '#data/players'
import type { Player } from '#squad/player'

/** The children whose page a person has claimed as their guardian, by name. */
export async function listChildrenOf(tx: ClubTx, personId: string): Promise<readonly Player[]> {
  if (!isId(personId)) return []
  return tx.db.player.findMany({
    where: {
      clubId: tx.clubId,
      erasedAt: null,
      guardianships: { some: { clubId: tx.clubId, personId, claimedAt: { not: null } } },
    },
    select: playerColumns,
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  })
}

/** A player's guardians, by name. */
export async function listGuardiansOf(tx: ClubTx, playerId: string): Promise<readonly Person[]> {
  if (!isId(playerId)) return []
  return tx.db.person.findMany({
    where: { clubId: tx.clubId, guardianships: { some: { clubId: tx.clubId, playerId } } },
    select: { id: true, name: true, role: true },
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  })
}

type Guardianship = {
  readonly personId: string
  readonly playerId: string
  /** Null or left out: the link for it has not been used yet, and nothing is seen through it. */
  readonly claimedAt?: Date | null
}

/** Those recorded before stay as they are. */
export async function recordGuardianships(tx: ClubTx, guardianships: readonly Guardianship[]): Promise<void> {
  await tx.db.guardianship.createMany({
    data: guardianships.map((one) => ({ clubId: tx.clubId, ...one })),
    skipDuplicates: true,
  })
}

export async function removeGuardianship(
  tx: ClubTx,
  { personId, playerId }: Omit<Guardianship, 'claimedAt'>,
): Promise<void> {
  await tx.db.guardianship.deleteMany({ where: { clubId: tx.clubId, personId, playerId } })
}
