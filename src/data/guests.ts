import 'server-only'
import type { Day } from '#common/time'
import { dateOf, dayOf } from '#data/days'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { insertRows } from '#data/insert-rows'
import { lastDayWithoutName, namelessGuest } from '#squad/guest'
import type { PlayerId } from '#squad/player'

/** A new face at a practice or match, and whom of the club it turned out to be. */
export type Guest = {
  readonly id: PlayerId
  readonly name: string
  readonly guestSince: Day
  /** Null: not joined to anybody. */
  readonly joinedToId: PlayerId | null
}

/** Of these players those who came as guests and are members nowhere, by name. */
export async function listGuests(tx: ClubTx, playerIds: readonly PlayerId[]): Promise<readonly Guest[]> {
  const rows = await tx.db.player.findMany({
    where: {
      clubId: tx.clubId,
      id: { in: playerIds.filter(isId) },
      guestSince: { not: null },
      memberships: { none: {} },
    },
    select: { id: true, name: true, guestSince: true, joinedToId: true },
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  })
  return rows.flatMap(({ guestSince, ...row }) =>
    guestSince ? [{ ...row, guestSince: dayOf(guestSince) }] : [],
  )
}

/** Of these ids those that stand for a player already, guest or not. */
export async function listTakenIds(tx: ClubTx, ids: readonly PlayerId[]): Promise<ReadonlySet<PlayerId>> {
  const rows = await tx.db.player.findMany({
    where: { clubId: tx.clubId, id: { in: ids.filter(isId) } },
    select: { id: true },
  })
  return new Set(rows.map(({ id }) => id))
}

/** Enters guests as players without a membership: outside every mean and flag. Their ids are the caller's. */
export async function recordGuests(
  tx: ClubTx,
  { guests, since }: { readonly guests: readonly Pick<Guest, 'id' | 'name'>[]; readonly since: Day },
): Promise<void> {
  const rows = guests.map(({ id, name }) => ({
    id,
    name,
    keeps: true,
    wantsToKeep: false,
    code: null,
    guestSince: since,
  }))
  await insertRows(tx, 'Player', rows)
}

/** Says whom a guest turned out to be. False: it is no guest, or joined already. */
export async function joinGuest(
  tx: ClubTx,
  { guestId, playerId }: { readonly guestId: PlayerId; readonly playerId: PlayerId },
): Promise<boolean> {
  const { count } = await tx.db.player.updateMany({
    where: { clubId: tx.clubId, id: guestId, guestSince: { not: null }, joinedToId: null },
    data: { joinedToId: playerId },
  })
  return count > 0
}

/** Of these players those who were joined, each with whom they turned out to be. */
export async function listJoined(
  tx: ClubTx,
  playerIds: readonly PlayerId[],
): Promise<ReadonlyMap<PlayerId, PlayerId>> {
  const rows = await tx.db.player.findMany({
    where: { clubId: tx.clubId, id: { in: playerIds.filter(isId) }, joinedToId: { not: null } },
    select: { id: true, joinedToId: true },
  })
  return new Map(rows.flatMap(({ id, joinedToId }) => (joinedToId ? [[id, joinedToId]] : [])))
}

/**
 * Takes away the names of guests who came 28 days ago or earlier; joined or not, nobody needs them any more. Who has
 * become a member keeps its name. How many names went.
 */
export async function forgetGuestNames(tx: ClubTx, today: Day): Promise<number> {
  const { count } = await tx.db.player.updateMany({
    where: {
      clubId: tx.clubId,
      guestSince: { lte: dateOf(lastDayWithoutName(today)) },
      name: { not: namelessGuest },
      memberships: { none: {} },
    },
    data: { name: namelessGuest },
  })
  return count
}
