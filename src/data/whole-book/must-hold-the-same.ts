import 'server-only'
import type pg from 'pg'
import type { BookTable } from '#data/whole-book/book-tables'
import { readSections } from '#data/whole-book/read-sections'
import type { BackupClub, Tally } from '#exchange/backup/backup-shape'
import { startTally } from '#exchange/backup/start-tally'

/**
 * Reads every row from the database again and holds counts and hashes against those of the backup.
 * @throws when one differs: the database would not hold what was backed up.
 */
export async function mustHoldTheSame(
  client: pg.Client,
  {
    tallies,
    tables,
    clubs,
    signal,
  }: {
    /** In the order of the sections. */
    readonly tallies: readonly Tally[]
    readonly tables: readonly BookTable[]
    readonly clubs: readonly BackupClub[]
    readonly signal: AbortSignal | undefined
  },
): Promise<void> {
  let at = 0
  for await (const { table, rows } of readSections(client, { tables, clubs })) {
    signal?.throwIfAborted()
    const counted = startTally()
    for await (const text of rows) counted.add(text)
    const [want, have] = [tallies[at], counted.tally()]
    if (want?.rows !== have.rows || want.sha256 !== have.sha256)
      throw new Error(`${table} came back as ${have.rows} rows that are not the ${want?.rows} of the backup`)
    at += 1
  }
}
