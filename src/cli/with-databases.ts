import { findDatabase } from '#cli/database-address'
import { InputError } from '#cli/verb'
import { closeDatabase, type Database, openDatabase } from '#data/database'

export type Databases = {
  /** By the owner of the tables: to know which clubs there are, and nothing else. */
  readonly owner: Database
  /** As the app, which can touch one club at a time. */
  readonly database: Database
}

/**
 * Does some work with the book's database. Connections are closed in every case.
 * @throws InputError when there is no database, or it does not answer.
 */
export async function withDatabases<Answer>(
  work: (databases: Databases) => Promise<Answer>,
): Promise<Answer> {
  const { ownerUrl, appUrl } = await findDatabase()
  const owner = openDatabase(ownerUrl, { connections: 1 })
  const database = openDatabase(appUrl, { connections: 2 })
  try {
    return await work({ owner, database })
  } catch (error) {
    throw orNotRunning(error)
  } finally {
    await Promise.all([closeDatabase(owner), closeDatabase(database)])
  }
}

/** What is to be thrown for a failure: a sentence where the database does not answer, else the failure itself. */
export function orNotRunning(error: unknown): unknown {
  return isRefusedConnection(error) ? new InputError([notRunning]) : error
}

const notRunning = {
  path: 'database',
  message: 'does not answer; a running "npm start", or another address in DATABASE_URL, would be right',
}

function isRefusedConnection(error: unknown): boolean {
  return (
    error instanceof Error &&
    /ECONNREFUSED|ENOTFOUND|Can't reach database/.test(`${error.message} ${String(error.cause)}`)
  )
}
