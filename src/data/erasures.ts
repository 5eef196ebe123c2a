import 'server-only'
import type { Author } from '#data/author'
import { Prisma } from '#data/generated/client'
import type { ClubTx } from '#data/in-club'
import type { PlayerId } from '#squad/player'

export type ErasureCause = 'request' | 'retention'

/**
 * Takes out of the club what names a child, for good; what it played stays as a column without a name. False: that was
 * done before. What goes and what stays is written in the database's own `erase_child`, which nothing else can do.
 */
export async function eraseChild(
  tx: ClubTx,
  { playerId, cause, by }: { readonly playerId: PlayerId; readonly cause: ErasureCause; readonly by: Author },
): Promise<boolean> {
  const [row] = await tx.db.$queryRaw<{ done: boolean }[]>(
    Prisma.sql`select erase_child(${playerId}::uuid, ${cause}::"ErasureCause", ${by.at}::timestamptz, ${by.personId}::uuid) as done`,
  )
  return row?.done === true
}

/** The children of the club that were erased: nobody any more, but a column in the books. */
export async function listErasedIds(tx: ClubTx): Promise<ReadonlySet<PlayerId>> {
  const rows = await tx.db.player.findMany({
    where: { clubId: tx.clubId, erasedAt: { not: null } },
    select: { id: true },
  })
  return new Set(rows.map(({ id }) => id))
}
