import 'server-only'
import pg from 'pg'
import { to as copyTo } from 'pg-copy-streams'
import { enterClub } from '#data/whole-book/book-connection'
import { type BookTable, clubColumn } from '#data/whole-book/book-tables'
import type { BackupClub, SectionName } from '#exchange/backup/backup-shape'
import { sectionsOf } from '#exchange/backup/read-backup'
import type { Section } from '#exchange/backup/write-backup'

/** Every row of the book as COPY text, section by section; each is to be read before the next is asked for. */
export async function* readSections(
  client: pg.Client,
  { tables, clubs }: { readonly tables: readonly BookTable[]; readonly clubs: readonly BackupClub[] },
): AsyncGenerator<Section> {
  const named = new Map(tables.map((table) => [table.name, table]))
  for (const section of sectionsOf({ tables: [...tables], clubs: [...clubs] })) {
    const table = named.get(section.table)
    if (!table) throw new Error(`no table ${section.table}`)
    if (section.clubId !== null) await enterClub(client, section.clubId)
    yield { ...section, rows: client.query(copyTo(copyOf(table, section))) }
  }
}

/** The club is asked for by name as well: row-level security does not bind a superuser. */
function copyOf({ name, columns, orderBy }: BookTable, { clubId }: SectionName): string {
  const ofClub =
    clubId === null ? '' : ` where ${pg.escapeIdentifier(clubColumn(name))} = ${pg.escapeLiteral(clubId)}`
  const list = columns.map((column) => pg.escapeIdentifier(column)).join(', ')
  return `copy (select ${list} from ${pg.escapeIdentifier(name)}${ofClub} order by ${orderBy}) to stdout`
}
