import 'server-only'
import type { Author } from '#data/author'
import { groupBySession } from '#data/by-session'
import { isId, newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { insertRows } from '#data/insert-rows'
import { lockSessions } from '#data/sessions'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'

/** The lines of each session that stand, by player and time. Sessions without any are not in the map. */
export async function listRegisters(
  tx: ClubTx,
  sessionIds: readonly string[],
): Promise<ReadonlyMap<string, readonly RegisterLine[]>> {
  const rows = await tx.db.registerLine.findMany({
    where: { clubId: tx.clubId, sessionId: { in: sessionIds.filter(isId) }, voidedAt: null },
    select: { sessionId: true, playerId: true, state: true, fromSecond: true, toSecond: true },
    orderBy: [{ playerId: 'asc' }, { fromSecond: 'asc' }],
  })
  return groupBySession(rows, ({ playerId, state, fromSecond, toSecond }) => ({
    playerId,
    state,
    from: fromSecond,
    to: toSecond,
  }))
}

/** The lines of one session that stand, by player and time. */
export async function listRegister(tx: ClubTx, sessionId: string): Promise<readonly RegisterLine[]> {
  return (await listRegisters(tx, [sessionId])).get(sessionId) ?? []
}

export type NewRegister = {
  readonly sessionId: string
  readonly lines: readonly RegisterLine[]
  /** Whose earlier lines no longer stand, beside the players of `lines`. */
  readonly alsoClear?: readonly PlayerId[]
}

/**
 * Writes registers: the earlier lines of the players concerned are voided, and these stand instead.
 * The database refuses lines of one player that overlap.
 * @throws AppError `notFound` when a session is not there.
 */
export async function recordRegisters(
  tx: ClubTx,
  { registers, by }: { readonly registers: readonly NewRegister[]; readonly by: Author },
): Promise<void> {
  const { clubId } = tx
  await lockSessions(
    tx,
    registers.map(({ sessionId }) => sessionId),
  )
  const concerned = registers.map(({ sessionId, lines, alsoClear = [] }) => ({
    clubId,
    sessionId,
    playerId: { in: [...new Set([...lines.map(({ playerId }) => playerId), ...alsoClear])] },
  }))
  const earlier = await tx.db.registerLine.findMany({
    where: { clubId, voidedAt: null, OR: concerned },
    select: { id: true },
  })
  if (earlier.length > 0) {
    await tx.db.registerLine.updateMany({
      where: { clubId, id: { in: earlier.map(({ id }) => id) } },
      data: { voidedAt: by.at, voidedById: by.personId },
    })
  }
  await insertRows(
    tx,
    'RegisterLine',
    registers.flatMap(({ sessionId, lines }) =>
      lines.map(({ playerId, state, from, to }) => ({
        id: newId(),
        sessionId,
        playerId,
        state,
        fromSecond: from,
        toSecond: to,
        recordedById: by.personId,
        recordedAt: by.at,
      })),
    ),
  )
}

/** One session's register; see `recordRegisters`. */
export function recordRegister(
  tx: ClubTx,
  { by, ...register }: NewRegister & { readonly by: Author },
): Promise<void> {
  return recordRegisters(tx, { registers: [register], by })
}

/** The sessions on whose register a player stands. */
export async function listSessionIdsWith(tx: ClubTx, playerId: PlayerId): Promise<readonly string[]> {
  if (!isId(playerId)) return []
  const rows = await tx.db.registerLine.findMany({
    where: { clubId: tx.clubId, playerId, voidedAt: null },
    select: { sessionId: true },
    distinct: ['sessionId'],
    orderBy: { sessionId: 'asc' },
  })
  return rows.map(({ sessionId }) => sessionId)
}
