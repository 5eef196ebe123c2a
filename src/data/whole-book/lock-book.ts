import 'server-only'
import { setTimeout } from 'node:timers/promises'
import pg from 'pg'
import type { BookTable } from '#data/whole-book/book-tables'

/** Below the second after which PostgreSQL looks for a deadlock: it would end a page's work as gladly as ours. */
const lockPatienceMs = 400
const pauseMs = 300
const lockTimedOut = '55P03'
const deadlocked = '40P01'

/**
 * Begins a transaction that has every table to itself. Pages hold some tables while they wait for others, so it never
 * waits long with some in hand, but lets go and tries again.
 * @returns whether it could before `patienceMs` were over; if not, no transaction is open.
 */
export async function beginAlone(
  client: pg.Client,
  {
    tables,
    patienceMs,
    signal,
  }: {
    readonly tables: readonly BookTable[]
    readonly patienceMs: number
    readonly signal?: AbortSignal | undefined
  },
): Promise<boolean> {
  const names = tables.map(({ name }) => pg.escapeIdentifier(name)).join(', ')
  const until = Date.now() + patienceMs
  for (;;) {
    signal?.throwIfAborted()
    try {
      await client.query('begin')
      await client.query(`set local lock_timeout = ${lockPatienceMs}`)
      await client.query(`lock table ${names} in access exclusive mode`)
      return true
    } catch (error) {
      await client.query('rollback')
      const code = error instanceof pg.DatabaseError ? error.code : ''
      if (code !== lockTimedOut && code !== deadlocked) throw error
      if (Date.now() >= until) return false
      await setTimeout(pauseMs)
    }
  }
}
