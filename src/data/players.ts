import 'server-only'
import { z } from 'zod'
import { AppError } from '#common/app-error'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { insertRows } from '#data/insert-rows'
import { sql } from '#data/sql'
import type { Player, PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'

/** `code`: its key in the file it was imported from; two files may use one key for two children. */
export type RosterPlayer = Player & { readonly code: string | null }

export const playerColumns = { id: true, name: true, keeps: true, wantsToKeep: true } as const
const rosterColumns = { ...playerColumns, code: true } as const

/** In the order of names; ids that are none of the club's are left out. */
export async function listPlayers(tx: ClubTx, ids: readonly PlayerId[]): Promise<readonly RosterPlayer[]> {
  return tx.db.player.findMany({
    where: { clubId: tx.clubId, id: { in: ids.filter(isId) } },
    select: rosterColumns,
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  })
}

const rosterRow = z.object({
  id: z.string(),
  name: z.string(),
  keeps: z.boolean(),
  wantsToKeep: z.boolean(),
  code: z.string().nullable(),
})

/**
 * Everyone a squad's book knows, by name: whoever was ever a member, and the guests of its sessions. Who is a member on
 * a day is for `isMemberOn` to say.
 */
export async function listSquadPlayers(tx: ClubTx, squadId: SquadId): Promise<readonly RosterPlayer[]> {
  if (!isId(squadId)) return []
  return sql(
    tx,
    rosterRow,
    Prisma.sql`
      with held as materialized (
        select s.id from "Session" s
        where s."clubId" = ${tx.clubId}::uuid and s."squadId" = ${squadId}::uuid and s."cancelledAt" is null
      ), known as materialized (
        select m."playerId" as id from "SquadMembership" m
        where m."clubId" = ${tx.clubId}::uuid and m."squadId" = ${squadId}::uuid
        union
        select r."playerId" from held join "RegisterLine" r on r."clubId" = ${tx.clubId}::uuid
          and r."sessionId" = held.id and r."voidedAt" is null
      )
      select p.id, p.name, p.keeps, p."wantsToKeep", p.code
      from known join "Player" p on p."clubId" = ${tx.clubId}::uuid and p.id = known.id
      order by p.name, p.id`,
  )
}

export async function findPlayer(tx: ClubTx, playerId: PlayerId): Promise<RosterPlayer | null> {
  if (!isId(playerId)) return null
  return tx.db.player.findUnique({
    where: { clubId_id: { clubId: tx.clubId, id: playerId } },
    select: rosterColumns,
  })
}

/** @throws AppError `notFound`. */
export async function getPlayer(tx: ClubTx, playerId: PlayerId): Promise<RosterPlayer> {
  const player = await findPlayer(tx, playerId)
  if (!player) throw new AppError('notFound', `no player ${playerId}`)
  return player
}

export async function recordPlayers(tx: ClubTx, players: readonly RosterPlayer[]): Promise<void> {
  await insertRows(
    tx,
    'Player',
    players.map(({ id, name, keeps, wantsToKeep, code }) => ({ id, name, keeps, wantsToKeep, code })),
  )
}

/**
 * Changes how a player stands today. A change of `keeps` has a day: `recordKeepsChange` writes it, and comes here.
 * @throws AppError `notFound`.
 */
export async function changePlayer(
  tx: ClubTx,
  playerId: PlayerId,
  change: Partial<Pick<Player, 'name' | 'keeps' | 'wantsToKeep'>>,
): Promise<void> {
  const { name, keeps, wantsToKeep } = change
  await getPlayer(tx, playerId)
  await tx.db.player.update({
    where: { clubId_id: { clubId: tx.clubId, id: playerId } },
    data: { name, keeps, wantsToKeep },
    select: { id: true },
  })
}
