import pg from 'pg'
import { describe, expect, it } from 'vitest'
import { testDatabase } from '../support/test-database'

async function askAs(connectionString: string, question: string): Promise<pg.QueryResultRow[]> {
  const client = new pg.Client({ connectionString })
  await client.connect()
  try {
    return (await client.query(question)).rows
  } finally {
    await client.end()
  }
}

describe('the database of a test file', () => {
  it('is a PostgreSQL of version 18', async () => {
    const [row] = await askAs(
      testDatabase().ownerUrl,
      "select current_setting('server_version_num')::int as version",
    )
    expect(row?.version).toBeGreaterThanOrEqual(180_000)
  })

  it('has had every migration', async () => {
    const rows = await askAs(
      testDatabase().ownerUrl,
      'select 1 from _prisma_migrations where finished_at is null',
    )
    expect(rows).toEqual([])
  })

  it('is reached by the app as a role that owns nothing and that row-level security binds', async () => {
    const [role] = await askAs(
      testDatabase().appUrl,
      'select current_user as name, rolsuper, rolbypassrls from pg_roles where rolname = current_user',
    )
    expect(role).toEqual({ name: 'turnbook_app', rolsuper: false, rolbypassrls: false })
    const owned = await askAs(
      testDatabase().ownerUrl,
      "select relname from pg_class where relowner = 'turnbook_app'::regrole",
    )
    expect(owned).toEqual([])
  })
})
