import 'server-only'
import type { Day } from '#common/time'
import { dateOf, dateOrNull, dayOf, dayOrNull } from '#data/days'
import { isId, newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { PlayerId } from '#squad/player'
import type { Membership, SquadId } from '#squad/squad'

/** Of a squad, past ones too, in order of their first day. */
export async function listMemberships(tx: ClubTx, squadId: SquadId): Promise<readonly Membership[]> {
  if (!isId(squadId)) return []
  const rows = await tx.db.squadMembership.findMany({
    where: { clubId: tx.clubId, squadId },
    select: { playerId: true, firstDay: true, lastDay: true },
    orderBy: [{ firstDay: 'asc' }, { playerId: 'asc' }],
  })
  return rows.map(({ playerId, firstDay, lastDay }) => ({
    playerId,
    firstDay: dayOf(firstDay),
    lastDay: dayOrNull(lastDay),
  }))
}

/** The squads a player has ever been a member of: whose coaches may see it. */
export async function listSquadIdsOf(tx: ClubTx, playerId: PlayerId): Promise<readonly SquadId[]> {
  if (!isId(playerId)) return []
  const rows = await tx.db.squadMembership.findMany({
    where: { clubId: tx.clubId, playerId },
    select: { squadId: true },
    distinct: ['squadId'],
    orderBy: { squadId: 'asc' },
  })
  return rows.map(({ squadId }) => squadId)
}

/**
 * The database refuses two memberships of one player in one squad that overlap. For days already written, rebuild the
 * squad's accounts after it.
 */
export async function recordMemberships(
  tx: ClubTx,
  { squadId, memberships }: { readonly squadId: SquadId; readonly memberships: readonly Membership[] },
): Promise<void> {
  await tx.db.squadMembership.createMany({
    data: memberships.map(({ playerId, firstDay, lastDay }) => ({
      clubId: tx.clubId,
      id: newId(),
      squadId,
      playerId,
      firstDay: dateOf(firstDay),
      lastDay: dateOrNull(lastDay),
    })),
  })
}

/** Ends the membership that is open on the day: the player's last day with the squad. False when there is none to end. */
export async function endMembership(
  tx: ClubTx,
  at: { readonly squadId: SquadId; readonly playerId: PlayerId; readonly lastDay: Day },
): Promise<boolean> {
  const lastDay = dateOf(at.lastDay)
  const { count } = await tx.db.squadMembership.updateMany({
    where: {
      clubId: tx.clubId,
      squadId: at.squadId,
      playerId: at.playerId,
      firstDay: { lte: lastDay },
      OR: [{ lastDay: null }, { lastDay: { gt: lastDay } }],
    },
    data: { lastDay },
  })
  return count > 0
}
