import 'server-only'
import type { Author } from '#data/author'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'

type OfChild = { readonly squadId: SquadId; readonly playerId: PlayerId }

/** The coaches' notes to families of a squad, by child; a child without one is left out. */
export async function listFamilyNotes(tx: ClubTx, squadId: SquadId): Promise<ReadonlyMap<PlayerId, string>> {
  if (!isId(squadId)) return new Map()
  const rows = await tx.db.familyNote.findMany({
    where: { clubId: tx.clubId, squadId },
    select: { playerId: true, text: true },
  })
  return new Map(rows.map(({ playerId, text }) => [playerId, text]))
}

/** Puts a note in the place of the one before; an empty one takes it away. */
export async function saveFamilyNote(
  tx: ClubTx,
  { squadId, playerId, text, by }: OfChild & { readonly text: string; readonly by: Author },
): Promise<void> {
  const key = { clubId: tx.clubId, playerId, squadId }
  if (text === '') {
    await tx.db.familyNote.deleteMany({ where: key })
    return
  }
  const written = { text, writtenById: by.personId, writtenAt: by.at }
  await tx.db.familyNote.upsert({
    where: { clubId_playerId_squadId: key },
    create: { ...key, ...written },
    update: written,
    select: { playerId: true },
  })
}
