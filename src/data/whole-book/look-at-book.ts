import 'server-only'
import { withBookConnection } from '#data/whole-book/book-connection'
import { listBookClubs, listBookMigrations, listBookTables } from '#data/whole-book/book-tables'
import type { BackupHeader } from '#exchange/backup/backup-shape'

/** Which clubs a database holds now, and of which version it is. */
export function lookAtBook(ownerUrl: string): Promise<Pick<BackupHeader, 'clubs' | 'migrations' | 'tables'>> {
  return withBookConnection(ownerUrl, async (client) => ({
    clubs: [...(await listBookClubs(client))],
    migrations: [...(await listBookMigrations(client))],
    tables: [...(await listBookTables(client)).kept],
  }))
}
