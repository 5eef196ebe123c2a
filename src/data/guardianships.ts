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

/** One child of one guardian. */
type GuardianOfChild = { readonly personId: string; readonly playerId: string }

type Guardianship = GuardianOfChild & {
  /** Null or left out: the link for it has not been used yet, and nothing is seen through it. */
  readonly claimedAt?: Date | null
  readonly withholdsComing?: boolean
  /** The administrator who recorded it. */
  readonly recordedById?: string | null
}

export type RecordedGuardianship = Required<Guardianship> & {
  readonly personName: string
  readonly playerName: string
}

/** Whose guardian a person is recorded as, or who is recorded for a child; by name. */
export async function listGuardianships(
  tx: ClubTx,
  of: { readonly personId: string } | { readonly playerId: string },
): Promise<readonly RecordedGuardianship[]> {
  const rows = await tx.db.guardianship.findMany({
    where: { clubId: tx.clubId, ...of },
    select: {
      personId: true,
      playerId: true,
      claimedAt: true,
      withholdsComing: true,
      recordedById: true,
      person: { select: { name: true } },
      player: { select: { name: true } },
    },
    orderBy: [{ player: { name: 'asc' } }, { person: { name: 'asc' } }, { personId: 'asc' }],
  })
  return rows.map(({ person, player, ...row }) => ({
    ...row,
    personName: person.name,
    playerName: player.name,
  }))
}

export async function findGuardianship(
  tx: ClubTx,
  { personId, playerId }: GuardianOfChild,
): Promise<Required<Guardianship> | null> {
  if (!isId(personId) || !isId(playerId)) return null
  return tx.db.guardianship.findUnique({
    where: { clubId_personId_playerId: { clubId: tx.clubId, personId, playerId } },
    select: { personId: true, playerId: true, claimedAt: true, withholdsComing: true, recordedById: true },
  })
}

/** From here on it opens the child's page. False: there is none that was not opened before. */
export async function claimGuardianship(
  tx: ClubTx,
  { personId, playerId, at }: GuardianOfChild & { readonly at: Date },
): Promise<boolean> {
  const { count } = await tx.db.guardianship.updateMany({
    where: { clubId: tx.clubId, personId, playerId, claimedAt: null },
    data: { claimedAt: at },
  })
  return count > 0
}

export async function changeWithholding(
  tx: ClubTx,
  { personId, playerId, withholdsComing }: GuardianOfChild & { readonly withholdsComing: boolean },
): Promise<void> {
  await tx.db.guardianship.updateMany({
    where: { clubId: tx.clubId, personId, playerId },
    data: { withholdsComing },
  })
}

/** Those recorded before stay as they are. */
export async function recordGuardianships(tx: ClubTx, guardianships: readonly Guardianship[]): Promise<void> {
  await tx.db.guardianship.createMany({
    data: guardianships.map((one) => ({ clubId: tx.clubId, ...one })),
    skipDuplicates: true,
  })
}

/** False: there was none. */
export async function removeGuardianship(
  tx: ClubTx,
  { personId, playerId }: GuardianOfChild,
): Promise<boolean> {
  const { count } = await tx.db.guardianship.deleteMany({ where: { clubId: tx.clubId, personId, playerId } })
  return count > 0
}
