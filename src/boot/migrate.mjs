import { createHash, randomUUID } from 'node:crypto'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import pg from 'pg'
import { inProject } from './places.mjs'
import { Refusal } from './refusal.mjs'

export const migrationsFolder = inProject('prisma/migrations')

/** The number by which migrating programs keep out of each other's way; the one that Prisma's own uses. */
export const advisoryLock = 72707369

/** As Prisma's own command makes it, so that either program can go on where the other stopped. */
const ledgerTable = `
  create table if not exists _prisma_migrations (
    id varchar(36) primary key not null,
    checksum varchar(64) not null,
    finished_at timestamptz,
    migration_name varchar(255) not null,
    logs text,
    rolled_back_at timestamptz,
    started_at timestamptz not null default now(),
    applied_steps_count integer not null default 0
  )`

/**
 * The migrations of a folder in the order of their names.
 *
 * @param {string} [folder] one folder per migration, each with a migration.sql
 * @returns {{ name: string, sql: string, checksum: string }[]}
 */
export function listMigrations(folder = migrationsFolder) {
  if (!existsSync(folder)) return []
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
    .map((name) => {
      const file = join(folder, name, 'migration.sql')
      if (!existsSync(file)) throw new Refusal(`The migration ${name} has no migration.sql.`)
      const sql = readFileSync(file, 'utf8')
      return { name, sql, checksum: createHash('sha256').update(sql).digest('hex') }
    })
}

/**
 * Brings a database up to the newest migration: each in one transaction, so each is done wholly or not at all.
 * Two programs that migrate at once take turns.
 *
 * @param {{ connectionString: string, folder?: string }} at the database, by its owner's address
 * @returns {Promise<string[]>} the names of those applied now; empty when the database was up to date.
 * @throws {Refusal} when a migration already applied was edited, is missing, or failed half-way.
 */
export async function migrate({ connectionString, folder = migrationsFolder }) {
  const client = new pg.Client({ connectionString })
  await client.connect()
  try {
    await client.query('select pg_advisory_lock($1)', [advisoryLock])
    await client.query(ledgerTable)
    const migrations = listMigrations(folder)
    const pending = pendingMigrations(migrations, await appliedMigrations(client))
    for (const migration of pending) await apply(client, migration)
    return pending.map(({ name }) => name)
  } finally {
    await client.end()
  }
}

async function appliedMigrations(client) {
  const { rows } = await client.query(
    `select migration_name as name, checksum, finished_at is not null as "isFinished"
     from _prisma_migrations where rolled_back_at is null order by started_at, migration_name`,
  )
  return rows
}

/**
 * What is still to do, after holding what was done against the files.
 *
 * @param {readonly { name: string, sql: string, checksum: string }[]} migrations
 * @param {readonly { name: string, checksum: string, isFinished: boolean }[]} applied
 */
export function pendingMigrations(migrations, applied) {
  const files = new Map(migrations.map((migration) => [migration.name, migration]))
  for (const { name, checksum, isFinished } of applied) {
    const file = files.get(name)
    if (!isFinished) {
      throw new Refusal(
        `The migration ${name} was begun on this database by another program and did not finish. Repair it first.`,
      )
    }
    if (!file) {
      throw new Refusal(
        `The database has had the migration ${name}, which this program does not know: it belongs to a newer version.`,
      )
    }
    if (file.checksum !== checksum) {
      throw new Refusal(
        `The migration ${name} was edited after the database had it. Put the file back as it was and write a new migration.`,
      )
    }
  }
  const done = new Set(applied.map(({ name }) => name))
  return migrations.filter(({ name }) => !done.has(name))
}

async function apply(client, { name, sql, checksum }) {
  await client.query('begin')
  try {
    await client.query(sql)
    await client.query(
      `insert into _prisma_migrations (id, checksum, finished_at, migration_name, applied_steps_count)
       values ($1, $2, clock_timestamp(), $3, 1)`,
      [randomUUID(), checksum, name],
    )
    await client.query('commit')
  } catch (error) {
    await client.query('rollback').catch(() => {})
    const line = error.position ? ` (line ${sql.slice(0, Number(error.position)).split('\n').length})` : ''
    throw new Refusal(
      `The migration ${name} failed${line}: ${error.message}. The database is as it was before it.`,
    )
  }
}
