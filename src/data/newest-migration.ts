import 'server-only'
import { z } from 'zod'
import { appDatabase } from '#data/database'

const row = z.tuple([z.object({ name: z.string().nullable() })])

/** The name of the migration that the database had last; null: none. */
export async function findNewestMigration(): Promise<string | null> {
  return row.parse(await appDatabase().$queryRaw`select newest_migration() as name`)[0].name
}
