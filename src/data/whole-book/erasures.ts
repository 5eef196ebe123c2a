import 'server-only'
import type pg from 'pg'
import { enterClub } from '#data/whole-book/book-connection'

/** A child whose data was erased, and must stay so whatever older copy is put back. */
export type Erased = {
  readonly clubId: string
  readonly playerId: string
  readonly cause: 'request' | 'retention'
  /** ISO 8601. */
  readonly erasedAt: string
}

/** Those that the database itself knows of. Row-level security must not bind the connection. */
export async function listErased(client: pg.Client): Promise<readonly Erased[]> {
  const { rows } = await client.query<Omit<Erased, 'erasedAt'> & { erasedAt: Date }>(
    `select "clubId", "playerId", cause::text as cause, "erasedAt" from "Erasure" order by 1, 2`,
  )
  return rows.map((row) => ({ ...row, erasedAt: row.erasedAt.toISOString() }))
}

/**
 * Erases again what was erased before, where the child is in the book.
 * @returns how many were erased now.
 */
export async function eraseAgain(client: pg.Client, erased: readonly Erased[]): Promise<number> {
  let count = 0
  for (const { clubId, playerId, cause, erasedAt } of erased) {
    await enterClub(client, clubId)
    const { rows } = await client.query<{ isNew: boolean }>(
      `select erase_child(p.id, $3::"ErasureCause", $4, null) as "isNew"
       from "Player" p where p."clubId" = $1 and p.id = $2`,
      [clubId, playerId, cause, erasedAt],
    )
    if (rows[0]?.isNew) count += 1
  }
  return count
}
