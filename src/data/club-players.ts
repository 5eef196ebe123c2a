import 'server-only'
import type { ClubTx } from '#data/in-club'
import type { RosterPlayer } from '#data/players'
import { namelessGuest } from '#squad/guest'
import type { SquadId } from '#squad/squad'

/** A player of the club with the squads it was ever a member of: what decides who may see it. */
export type ClubPlayer = RosterPlayer & { readonly squadIds: readonly SquadId[] }

/**
 * Everyone of the club, by name; guests who turned out to be somebody else, or whose name has gone, are nobody of it, and
 * erased children neither.
 */
export async function listClubPlayers(tx: ClubTx): Promise<readonly ClubPlayer[]> {
  const rows = await tx.db.player.findMany({
    where: {
      clubId: tx.clubId,
      erasedAt: null,
      joinedToId: null,
      NOT: { guestSince: { not: null }, name: namelessGuest },
    },
    select: {
      id: true,
      name: true,
      keeps: true,
      wantsToKeep: true,
      code: true,
      memberships: { select: { squadId: true } },
    },
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  })
  return rows.map(({ memberships, ...player }) => ({
    ...player,
    squadIds: [...new Set(memberships.map(({ squadId }) => squadId))],
  }))
}
