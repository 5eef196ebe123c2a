import pg from 'pg'
import { afterAll, inject } from 'vitest'
import { closeAppDatabase, closeDatabase, openDatabase } from '#data/database'
import { loadDemoClub } from '../../seeds/load-demo-club'
import { templateDatabase } from '../../src/boot/throw-away-postgres.mjs'
import { cloningLock, testDatabase } from './test-database'

const demoTemplate = 'tb_demo'
const making = 'tb_demo_making'
/** Whoever asks first loads; the others wait for it. */
const loadingLock = 8_150_327

// Before the database is dropped, which would break its connections.
afterAll(closeAppDatabase)

/**
 * Puts the demo club in the place of the test file's database, which must be empty still: it is loaded once a run, by
 * the first file that asks, and copied from then on, which is many times quicker.
 */
export async function loadDemoBook(): Promise<void> {
  const name = new URL(testDatabase().ownerUrl).pathname.slice(1)
  const { ownerUrl } = inject('databaseServer')
  const client = new pg.Client({ connectionString: `${ownerUrl}postgres` })
  await client.connect()
  try {
    await client.query('select pg_advisory_lock($1)', [loadingLock])
    const { rowCount } = await client.query('select from pg_database where datname = $1', [demoTemplate])
    if (!rowCount) await makeTemplate(client, ownerUrl)
    await client.query('select pg_advisory_unlock($1)', [loadingLock])
    await client.query('select pg_advisory_lock($1)', [cloningLock])
    await client.query(`drop database ${name} with (force)`)
    await client.query(`create database ${name} template ${demoTemplate} strategy file_copy`)
  } finally {
    await client.end()
  }
}

async function makeTemplate(client: pg.Client, ownerUrl: string): Promise<void> {
  await client.query(`drop database if exists ${making} with (force)`)
  await client.query('select pg_advisory_lock($1)', [cloningLock])
  await client.query(`create database ${making} template ${templateDatabase} strategy file_copy`)
  await client.query('select pg_advisory_unlock($1)', [cloningLock])
  const owner = openDatabase(`${ownerUrl}${making}`, { connections: 1 })
  try {
    await loadDemoClub(owner, () => {})
  } finally {
    await closeDatabase(owner)
  }
  // Its name says that it is whole.
  await client.query(`alter database ${making} rename to ${demoTemplate}`)
}
