import 'server-only'
import type { Author } from '#data/author'
import { groupBySession } from '#data/by-session'
import { isId, newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { insertRows } from '#data/insert-rows'
import { lockSessions } from '#data/sessions'
import type { Spell } from '#match/match'
import type { PlayerId } from '#squad/player'

/** The spells of each match that stand, by time and player. Matches without any are not in the map. */
export async function listSpellsOf(
  tx: ClubTx,
  sessionIds: readonly string[],
): Promise<ReadonlyMap<string, readonly Spell[]>> {
  const rows = await tx.db.matchSpell.findMany({
    where: { clubId: tx.clubId, sessionId: { in: sessionIds.filter(isId) }, voidedAt: null },
    select: { sessionId: true, playerId: true, line: true, startSecond: true, endSecond: true },
    orderBy: [{ startSecond: 'asc' }, { playerId: 'asc' }],
  })
  return groupBySession(rows, ({ playerId, line, startSecond, endSecond }) => ({
    playerId,
    line,
    start: startSecond,
    end: endSecond,
  }))
}

/** The spells of one match that stand, by time and player. */
export async function listSpells(tx: ClubTx, sessionId: string): Promise<readonly Spell[]> {
  return (await listSpellsOf(tx, [sessionId])).get(sessionId) ?? []
}

/**
 * Writes spells of matches beside those that stand. The database refuses spells of one player that overlap, and
 * spells of a practice.
 * @throws AppError `notFound` when a session is not there.
 */
export async function recordSpells(
  tx: ClubTx,
  {
    matches,
    by,
  }: {
    readonly matches: readonly { readonly sessionId: string; readonly spells: readonly Spell[] }[]
    readonly by: Author
  },
): Promise<void> {
  await lockSessions(
    tx,
    matches.map(({ sessionId }) => sessionId),
  )
  await insertRows(
    tx,
    'MatchSpell',
    matches.flatMap(({ sessionId, spells }) =>
      spells.map(({ playerId, line, start, end }) => ({
        id: newId(),
        sessionId,
        playerId,
        line,
        startSecond: start,
        endSecond: end,
        recordedById: by.personId,
        recordedAt: by.at,
      })),
    ),
  )
}

/**
 * Voids the spells of a match that stand: of these players, or of all. A correction voids, then records anew.
 * @throws AppError `notFound` when the session is not there.
 */
export async function voidSpells(
  tx: ClubTx,
  at: { readonly sessionId: string; readonly playerIds?: readonly PlayerId[]; readonly by: Author },
): Promise<number> {
  await lockSessions(tx, [at.sessionId])
  const { count } = await tx.db.matchSpell.updateMany({
    where: {
      clubId: tx.clubId,
      sessionId: at.sessionId,
      voidedAt: null,
      ...(at.playerIds && { playerId: { in: [...at.playerIds] } }),
    },
    data: { voidedAt: at.by.at, voidedById: at.by.personId },
  })
  return count
}
