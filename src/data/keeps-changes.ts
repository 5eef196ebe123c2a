import 'server-only'
import { AppError } from '#common/app-error'
import type { Day } from '#common/time'
import type { Author } from '#data/author'
import { dateOf, dayOf } from '#data/days'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { changePlayer, getPlayer } from '#data/players'
import { type KeepsChange, keepsOn } from '#squad/keeps-change'
import type { PlayerId } from '#squad/player'

/** Of these players, by day; of one player's on one day, in order of writing. */
export async function listKeepsChanges(
  tx: ClubTx,
  playerIds: readonly PlayerId[],
): Promise<readonly KeepsChange[]> {
  const rows = await tx.db.keepsChange.findMany({
    where: { clubId: tx.clubId, playerId: { in: playerIds.filter(isId) } },
    select: { playerId: true, day: true, keeps: true },
    orderBy: [{ day: 'asc' }, { playerId: 'asc' }, { seq: 'asc' }],
  })
  return rows.map(({ playerId, day, keeps }) => ({ playerId, day: dayOf(day), keeps }))
}

/**
 * Writes that a player may be put in goal from a day on, or asks not to be; `today` is the club's. False when that is
 * what holds on the day already, and then nothing is written. It changes what everybody was due from that day on:
 * rebuild the sessions concerned after it. A day to come is for callers to refuse: how a player stands is as of today.
 * @throws AppError `notFound`.
 */
export async function recordKeepsChange(
  tx: ClubTx,
  { today, by, ...change }: KeepsChange & { readonly today: Day; readonly by: Author },
): Promise<boolean> {
  const { playerId, day, keeps } = change
  await lockPlayer(tx, playerId)
  const player = await getPlayer(tx, playerId)
  const changes = await listKeepsChanges(tx, [playerId])
  if (keepsOn(player, { changes, day }) === keeps) return false
  await tx.db.keepsChange.createMany({
    data: [
      {
        clubId: tx.clubId,
        playerId,
        seq: changes.length + 1,
        day: dateOf(day),
        keeps,
        recordedById: by.personId,
        recordedAt: by.at,
      },
    ],
  })
  const now = keepsOn(player, { changes: [...changes, change], day: today })
  if (now !== player.keeps) await changePlayer(tx, playerId, { keeps: now })
  return true
}

/** Two who change one player at the same time take turns. */
async function lockPlayer(tx: ClubTx, playerId: PlayerId): Promise<void> {
  if (!isId(playerId)) throw new AppError('notFound', `no player ${playerId}`)
  await tx.db.$queryRaw(Prisma.sql`
    select id from "Player" where "clubId" = ${tx.clubId}::uuid and id = ${playerId}::uuid for no key update`)
}
