import 'server-only'
import { AppError } from '#common/app-error'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { playerColumns } from '#data/players'
import type { Player, PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'

/** Whoever was ever a member of a squad and is not erased, by name: the children whose families may read of it. */
export async function listChildrenOfSquad(tx: ClubTx, squadId: SquadId): Promise<readonly Player[]> {
  if (!isId(squadId)) return []
  return tx.db.player.findMany({
    where: {
      clubId: tx.clubId,
      erasedAt: null,
      memberships: { some: { clubId: tx.clubId, squadId } },
    },
    select: playerColumns,
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  })
}

/** @throws AppError `notFound` for an erased child too. */
export async function getChild(tx: ClubTx, playerId: PlayerId): Promise<Player> {
  const child = isId(playerId)
    ? await tx.db.player.findFirst({
        where: { clubId: tx.clubId, id: playerId, erasedAt: null },
        select: playerColumns,
      })
    : null
  if (!child) throw new AppError('notFound', `no child ${playerId}`)
  return child
}
