import 'server-only'
import { AppError } from '#common/app-error'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { SquadId } from '#squad/squad'

/**
 * Makes whoever else enters things into the squad, or gives it away, wait until the transaction ends: two people who send
 * the same file at the same time, or one who taps twice, must not enter it twice. Readers, and people who write what a
 * session gave, do not wait.
 * @throws AppError `notFound`.
 */
export async function lockSquad(tx: ClubTx, squadId: SquadId): Promise<void> {
  if (!isId(squadId)) throw new AppError('notFound', `no squad ${squadId}`)
  const locked = await tx.db.$queryRaw<unknown[]>(Prisma.sql`
    select id from "Squad" where "clubId" = ${tx.clubId}::uuid and id = ${squadId}::uuid for no key update`)
  if (locked.length === 0) throw new AppError('notFound', `no squad ${squadId}`)
}
