import 'server-only'
import pg from 'pg'
import { withBookConnection } from '#data/whole-book/book-connection'
import { listBookClubs, listBookMigrations, listBookTables } from '#data/whole-book/book-tables'
import { readSections } from '#data/whole-book/read-sections'
import type { BackupHeader } from '#exchange/backup/backup-shape'
import type { Section } from '#exchange/backup/write-backup'

/**
 * Shows the whole book as it stands at one moment, whatever is written meanwhile: one transaction with one snapshot.
 * It holds nobody up but a restore or a migration, and they it.
 */
export function readWholeBook<Answer>(
  ownerUrl: string,
  work: (
    header: Omit<BackupHeader, 'format' | 'madeAt'>,
    sections: AsyncIterable<Section>,
  ) => Promise<Answer>,
): Promise<Answer> {
  return withBookConnection(ownerUrl, async (client) => {
    const { kept } = await listBookTables(client)
    await client.query('begin isolation level repeatable read, read only')
    // Before anything is read: a table emptied by a restore would look empty to an older snapshot.
    const names = kept.map(({ name }) => pg.escapeIdentifier(name)).join(', ')
    await client.query(`lock table ${names} in access share mode`)
    const { kept: tables } = await listBookTables(client)
    const clubs = [...(await listBookClubs(client))]
    const migrations = [...(await listBookMigrations(client))]
    const said = tables.map(({ name, columns, isByClub }) => ({ name, columns, isByClub }))
    const answer = await work({ migrations, tables: said, clubs }, readSections(client, { tables, clubs }))
    await client.query('commit')
    return answer
  })
}
