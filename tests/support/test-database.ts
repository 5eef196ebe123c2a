import { randomBytes } from 'node:crypto'
import pg from 'pg'
import { inject } from 'vitest'
import { templateDatabase } from '../../src/boot/throw-away-postgres.mjs'

export type TestDatabase = {
  readonly name: string
  /** As the role that owns every table. */
  readonly ownerUrl: string
  /** As the role that the pages work as: it owns nothing. */
  readonly appUrl: string
  readonly drop: () => Promise<void>
}

/** PostgreSQL copies a template only while nobody is connected to it: cloning goes one at a time. */
export const cloningLock = 8_150_326

/** A migrated, empty database of its own; about 20 ms. */
export async function cloneTestDatabase(): Promise<TestDatabase> {
  const server = inject('databaseServer')
  const name = `tb_${randomBytes(6).toString('hex')}`
  await onServer(async (client) => {
    await client.query('select pg_advisory_lock($1)', [cloningLock])
    await client.query(`create database ${name} template ${templateDatabase} strategy file_copy`)
  })
  return {
    name,
    ownerUrl: `${server.ownerUrl}${name}`,
    appUrl: `${server.appUrl}${name}`,
    drop: () => onServer((client) => client.query(`drop database if exists ${name} with (force)`)),
  }
}

async function onServer(work: (client: pg.Client) => Promise<unknown>): Promise<void> {
  const client = new pg.Client({ connectionString: `${inject('databaseServer').ownerUrl}postgres` })
  await client.connect()
  try {
    await work(client)
  } finally {
    await client.end()
  }
}

/** The database of the test file that asks: the same for every call in one file, and dropped after its last test. */
export function testDatabase(): Pick<TestDatabase, 'ownerUrl' | 'appUrl'> {
  const { DATABASE_URL: ownerUrl, DATABASE_APP_URL: appUrl } = process.env
  if (!ownerUrl || !appUrl)
    throw new Error('No database: the test file is not in a project that gives it one.')
  return { ownerUrl, appUrl }
}
