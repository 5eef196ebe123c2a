import 'server-only'
import type { ClubTx } from '#data/in-club'

/** A child found by a part of its name, with the squads it was ever in, in order of age. */
export type FoundPlayer = {
  readonly id: string
  readonly name: string
  readonly squadNames: readonly string[]
}

/** By name; guests and erased children are nobody to be found. */
export async function findPlayers(
  tx: ClubTx,
  { text, limit }: { readonly text: string; readonly limit: number },
): Promise<readonly FoundPlayer[]> {
  const rows = await tx.db.player.findMany({
    where: {
      clubId: tx.clubId,
      erasedAt: null,
      guestSince: null,
      name: { contains: text.replace(/[\\%_]/g, '\\$&'), mode: 'insensitive' },
    },
    select: {
      id: true,
      name: true,
      memberships: { select: { squad: { select: { name: true, ageLimit: true } } } },
    },
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
    take: limit,
  })
  return rows.map(({ memberships, ...player }) => {
    const squads = memberships.map(({ squad }) => squad).sort((a, b) => a.ageLimit - b.ageLimit)
    return { ...player, squadNames: [...new Set(squads.map(({ name }) => name))] }
  })
}
