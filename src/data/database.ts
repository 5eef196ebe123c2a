import 'server-only'
import { PrismaPg } from '@prisma/adapter-pg'
import { PrismaClient } from '#data/generated/client'

/** A pool of connections to one database, as one role. Only files of this folder look inside. */
export type Database = PrismaClient

/** Opens a pool; connections are made when they are needed. Close it with `closeDatabase`. */
export function openDatabase(
  connectionString: string,
  options: { readonly connections?: number } = {},
): Database {
  return new PrismaClient({
    adapter: new PrismaPg({ connectionString, max: options.connections ?? 10 }),
    // Children's names could stand in a query: what failed is logged by whoever catches it, by its code.
    log: [],
    errorFormat: 'minimal',
  })
}

export function closeDatabase(database: Database): Promise<void> {
  return database.$disconnect()
}

const opened = globalThis as { turnbookDatabase?: Database }

/**
 * The app's database, by the role that owns nothing: one pool in a process. Kept on globalThis, because the server of
 * `next dev` loads this file anew after each change.
 * @throws when DATABASE_APP_URL is not set.
 */
export function appDatabase(): Database {
  if (!opened.turnbookDatabase) {
    const address = process.env.DATABASE_APP_URL
    if (!address)
      throw new Error('DATABASE_APP_URL must be set to the address of the database as the app role')
    opened.turnbookDatabase = openDatabase(address)
  }
  return opened.turnbookDatabase
}

/** Closes the app's pool when it was opened; the next call of `appDatabase` opens another. */
export async function closeAppDatabase(): Promise<void> {
  const database = opened.turnbookDatabase
  delete opened.turnbookDatabase
  await database?.$disconnect()
}
