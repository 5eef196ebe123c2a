import 'server-only'
import type { DeedName } from '#access/deed-words'
import { type AuditEntry, entryColumns, toEntry } from '#data/audit'
import type { ClubTx } from '#data/in-club'
import type { PlayerId } from '#squad/player'

/** Which lines of the record are asked for; null leaves nothing out. */
export type AuditWish = {
  readonly personId: string | null
  readonly playerId: PlayerId | null
  /** Instants, `to` excluded. */
  readonly from: Date | null
  readonly to: Date | null
  /** Deeds of these names alone, or all but these. */
  readonly actions: { readonly only: readonly DeedName[] } | { readonly without: readonly DeedName[] } | null
}

/** The newest first. */
export async function listAuditPage(
  tx: ClubTx,
  { wish, skip, take }: { readonly wish: AuditWish; readonly skip: number; readonly take: number },
): Promise<readonly AuditEntry[]> {
  const { personId, from, to, actions } = wish
  const rows = await tx.db.auditEntry.findMany({
    where: {
      clubId: tx.clubId,
      ...(personId !== null && { personId }),
      ...((from || to) && { at: { ...(from && { gte: from }), ...(to && { lt: to }) } }),
      ...(actions && {
        action: 'only' in actions ? { in: [...actions.only] } : { notIn: [...actions.without] },
      }),
      ...(wish.playerId !== null && (await whereAbout(tx, wish.playerId))),
    },
    select: entryColumns,
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    skip,
    take,
  })
  return rows.map(toEntry)
}

/** A child is in a line by its own id, or by that of something that is about it alone. */
async function whereAbout({ db, clubId }: ClubTx, playerId: PlayerId) {
  const where = { clubId, playerId }
  const ofPair = { clubId, OR: [{ oneId: playerId }, { otherId: playerId }] }
  const select = { id: true }
  const things = [
    await db.childRequest.findMany({ where, select }),
    await db.consent.findMany({ where, select }),
    await db.flagState.findMany({ where, select }),
    await db.playerPair.findMany({ where: ofPair, select }),
  ].flat()
  return {
    OR: [
      { objectId: { in: [playerId, ...things.map(({ id }) => id)] } },
      { detail: { path: ['playerId'], equals: playerId } },
    ],
  }
}
