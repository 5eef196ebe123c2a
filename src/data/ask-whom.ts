import 'server-only'
import type { ClubTx } from '#data/in-club'

/** Whom families are to ask, in the club's own words; empty: nobody has written it yet. */
export async function findAskWhom(tx: ClubTx): Promise<string> {
  const row = await tx.db.club.findUnique({ where: { id: tx.clubId }, select: { askWhom: true } })
  return row?.askWhom ?? ''
}
