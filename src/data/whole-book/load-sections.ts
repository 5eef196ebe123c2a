import 'server-only'
import { pipeline } from 'node:stream/promises'
import pg from 'pg'
import { from as copyFrom } from 'pg-copy-streams'
import type { BookTable } from '#data/whole-book/book-tables'
import type { Tally } from '#exchange/backup/backup-shape'
import type { BackupPiece } from '#exchange/backup/read-backup'

/**
 * Enters the rows of every section as they come.
 * @returns count and hash of each section, in their order.
 */
export async function loadSections(
  client: pg.Client,
  {
    coming,
    tables,
    signal,
  }: {
    /** What follows the header. */
    readonly coming: AsyncIterator<BackupPiece>
    readonly tables: readonly BookTable[]
    readonly signal: AbortSignal | undefined
  },
): Promise<readonly Tally[]> {
  const tallies: Tally[] = []
  const named = new Map(tables.map((table) => [table.name, table]))
  for (let next = await coming.next(); !next.done; next = await coming.next()) {
    signal?.throwIfAborted()
    const piece = next.value
    if (piece.kind !== 'section') continue
    const table = named.get(piece.table)
    if (!table) throw new Error(`no table ${piece.table}`)
    const tally = (found: Tally) => tallies.push(found)
    await pipeline(rowsOfSection(coming, tally), client.query(copyFrom(copyInto(table))), { signal })
  }
  return tallies
}

/** Up to the tally, and no further: the next section is for the next copy. */
async function* rowsOfSection(
  coming: AsyncIterator<BackupPiece>,
  onTally: (tally: Tally) => unknown,
): AsyncGenerator<Buffer> {
  for (;;) {
    const { done, value: piece } = await coming.next()
    if (done) return
    if (piece.kind === 'tally') {
      onTally(piece)
      return
    }
    if (piece.kind === 'rows') yield piece.text
  }
}

function copyInto({ name, columns }: BookTable): string {
  const list = columns.map((column) => pg.escapeIdentifier(column)).join(', ')
  return `copy ${pg.escapeIdentifier(name)} (${list}) from stdin`
}
