import 'server-only'
import pg from 'pg'

const opened = globalThis as { turnbookTries?: pg.Pool }

/** A small pool of its own for counting tries: who guesses passwords must not hold up the pages. */
export function triesPool(): pg.Pool {
  if (!opened.turnbookTries) {
    const connectionString = process.env.DATABASE_APP_URL
    if (!connectionString)
      throw new Error('DATABASE_APP_URL must be set to the address of the database as the app role')
    opened.turnbookTries = new pg.Pool({ connectionString, max: 2 })
    // A connection that breaks while nobody uses it: the next try opens another.
    opened.turnbookTries.on('error', () => undefined)
  }
  return opened.turnbookTries
}

export async function closeTriesPool(): Promise<void> {
  const pool = opened.turnbookTries
  delete opened.turnbookTries
  await pool?.end()
}
