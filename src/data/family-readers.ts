import 'server-only'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { PlayerId } from '#squad/player'

/** How many guardians of a child are recorded, how many of them have opened their page, and from how many time and place are withheld. */
export type Readers = { readonly recorded: number; readonly claimed: number; readonly withheld: number }

export const noReaders: Readers = { recorded: 0, claimed: 0, withheld: 0 }

/** By child; one without guardians is left out. */
export async function countReaders(
  tx: ClubTx,
  playerIds: readonly PlayerId[],
): Promise<ReadonlyMap<PlayerId, Readers>> {
  const rows = await tx.db.guardianship.findMany({
    where: { clubId: tx.clubId, playerId: { in: playerIds.filter(isId) } },
    select: { playerId: true, claimedAt: true, withholdsComing: true },
  })
  const readers = new Map<PlayerId, Readers>()
  for (const { playerId, claimedAt, withholdsComing } of rows) {
    const { recorded, claimed, withheld } = readers.get(playerId) ?? noReaders
    readers.set(playerId, {
      recorded: recorded + 1,
      claimed: claimed + (claimedAt ? 1 : 0),
      withheld: withheld + (withholdsComing ? 1 : 0),
    })
  }
  return readers
}
