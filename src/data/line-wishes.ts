import 'server-only'
import { groupBy } from '#common/group-by'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { fieldLines, type LineWishes, noWishes } from '#match/format/line-wish'
import type { PlayerId } from '#squad/player'

/** What was said of lines, by player; whoever is not in the map has said nothing. */
export async function listLineWishes(
  tx: ClubTx,
  playerIds: readonly PlayerId[],
): Promise<ReadonlyMap<PlayerId, LineWishes>> {
  const rows = await tx.db.lineWish.findMany({
    where: { clubId: tx.clubId, playerId: { in: playerIds.filter(isId) }, line: { in: [...fieldLines] } },
    select: { playerId: true, line: true, wish: true },
  })
  return new Map(
    [...groupBy(rows, ({ playerId }) => playerId)].map(([playerId, own]) => [
      playerId,
      { ...noWishes, ...Object.fromEntries(own.map(({ line, wish }) => [line, wish])) },
    ]),
  )
}

/** Puts what is said of a player's lines in the place of what was said before; an open line keeps no row. */
export async function setLineWishes(
  tx: ClubTx,
  { playerId, wishes }: { readonly playerId: PlayerId; readonly wishes: LineWishes },
): Promise<void> {
  await tx.db.lineWish.deleteMany({ where: { clubId: tx.clubId, playerId } })
  const said = fieldLines.flatMap((line) => {
    const wish = wishes[line]
    return wish === 'open' ? [] : [{ clubId: tx.clubId, playerId, line, wish }]
  })
  await tx.db.lineWish.createMany({ data: said })
}
