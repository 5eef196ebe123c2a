import { chmodSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import pg from 'pg'
import { appRole } from './app-role.mjs'
import { migrate } from './migrate.mjs'
import { databaseUrl, startServer } from './postgres.mjs'
import { ownerRole, prepareCluster } from './postgres-cluster.mjs'

/** The database that every test's own is cloned from. */
export const templateDatabase = 'tb_template'

const password = 'only-for-tests'

/**
 * A PostgreSQL of its own in a temporary folder, with a migrated database to clone. Nothing of it is worth keeping.
 *
 * @returns {Promise<{ port: number, ownerUrl: (database: string) => string, appUrl: (database: string) => string, stop: () => Promise<void> }>}
 */
export async function startThrowAwayPostgres() {
  const folder = mkdtempSync(join(tmpdir(), 'turnbook-test-'))
  chmodSync(folder, 0o711)
  const cluster = await prepareCluster({ folder, password, isThrowAway: true })
  const server = await startServer(cluster)
  const at = (role) => (database) => databaseUrl({ port: server.port, role, password, database })
  const ownerUrl = at(ownerRole)
  const stop = async () => {
    await server.stop()
    rmSync(folder, { recursive: true, force: true })
  }
  try {
    const client = new pg.Client({ connectionString: ownerUrl('postgres') })
    await client.connect()
    await client.query(
      `create role ${appRole} login nosuperuser nobypassrls password ${pg.escapeLiteral(password)}`,
    )
    await client.query(`create database ${templateDatabase}`)
    await client.end()
    await migrate({ connectionString: ownerUrl(templateDatabase) })
  } catch (error) {
    await stop()
    throw error
  }
  return { port: server.port, ownerUrl, appUrl: at(appRole), stop }
}
