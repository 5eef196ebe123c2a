import 'server-only'
import { z } from 'zod'
import type { Day } from '#common/time'
import { dateOf, dateOrNull, dayOf, dayOrNull } from '#data/days'
import { Prisma } from '#data/generated/client'
import { isId, newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { sql } from '#data/sql'
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

/** Every membership of a player, in any squad, in order of its first day. */
export async function listMembershipsOf(
  tx: ClubTx,
  playerId: PlayerId,
): Promise<readonly (Membership & { readonly squadId: SquadId })[]> {
  if (!isId(playerId)) return []
  const rows = await tx.db.squadMembership.findMany({
    where: { clubId: tx.clubId, playerId },
    select: { playerId: true, squadId: true, firstDay: true, lastDay: true },
    orderBy: [{ firstDay: 'asc' }, { squadId: 'asc' }],
  })
  return rows.map(({ firstDay, lastDay, ...row }) => ({
    ...row,
    firstDay: dayOf(firstDay),
    lastDay: dayOrNull(lastDay),
  }))
}

/** The squads in whose sessions a player counts from a day on: as a member, or as a guest on a register. */
export async function listSquadIdsWith(
  tx: ClubTx,
  { playerId, from }: { readonly playerId: PlayerId; readonly from: Day },
): Promise<readonly SquadId[]> {
  if (!isId(playerId)) return []
  const rows = await sql(
    tx,
    z.object({ squadId: z.string() }),
    Prisma.sql`
      select m."squadId" from "SquadMembership" m
      where m."clubId" = ${tx.clubId}::uuid and m."playerId" = ${playerId}::uuid
        and (m."lastDay" is null or m."lastDay" >= ${from}::date)
      union
      select s."squadId" from "RegisterLine" r
        join "Session" s on s."clubId" = r."clubId" and s.id = r."sessionId"
      where r."clubId" = ${tx.clubId}::uuid and r."playerId" = ${playerId}::uuid and r."voidedAt" is null
        and s.day >= ${from}::date
      order by 1`,
  )
  return rows.map(({ squadId }) => squadId)
}

/** Changes the days of the membership that began on `heldFrom`. False when there is none. */
export async function changeMembership(
  tx: ClubTx,
  at: { readonly squadId: SquadId; readonly playerId: PlayerId; readonly heldFrom: Day },
  days: { readonly firstDay: Day; readonly lastDay: Day | null },
): Promise<boolean> {
  const { count } = await tx.db.squadMembership.updateMany({
    where: {
      clubId: tx.clubId,
      squadId: at.squadId,
      playerId: at.playerId,
      firstDay: dateOf(at.heldFrom),
    },
    data: { firstDay: dateOf(days.firstDay), lastDay: dateOrNull(days.lastDay) },
  })
  return count > 0
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
