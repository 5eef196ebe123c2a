import { appendFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import pg from 'pg'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { migrate } from '../../src/boot/migrate.mjs'
import { startThrowAwayPostgres } from '../../src/boot/throw-away-postgres.mjs'

describe('migrating', () => {
  let server: Awaited<ReturnType<typeof startThrowAwayPostgres>>
  let folder: string
  let connectionString: string
  let client: pg.Client

  beforeAll(async () => {
    server = await startThrowAwayPostgres()
    connectionString = server.ownerUrl('trial')
  })
  afterAll(() => server.stop())

  beforeEach(async () => {
    await onServer('create database trial')
    client = new pg.Client({ connectionString })
    await client.connect()
    folder = mkdtempSync(join(tmpdir(), 'turnbook-migrations-'))
    write(
      '20260101000000_make_cups',
      "create table cup (name text); insert into cup values ('first; with a semicolon');",
    )
    write('20260102000000_add_size', 'alter table cup add size int;')
  })
  afterEach(async () => {
    await client.end()
    await onServer('drop database trial with (force)')
    rmSync(folder, { recursive: true })
  })

  async function onServer(sql: string): Promise<void> {
    const admin = new pg.Client({ connectionString: server.ownerUrl('postgres') })
    await admin.connect()
    await admin.query(sql)
    await admin.end()
  }

  function write(name: string, sql: string): void {
    mkdirSync(join(folder, name))
    writeFileSync(join(folder, name, 'migration.sql'), sql)
  }

  const run = () => migrate({ connectionString, folder })

  it('applies each file once, in the order of the names', async () => {
    expect(await run()).toEqual(['20260101000000_make_cups', '20260102000000_add_size'])
    expect(await run()).toEqual([])
    expect((await client.query('select * from cup')).rows).toEqual([
      { name: 'first; with a semicolon', size: null },
    ])
  })

  it('notes them as the official command does: SHA-256 of the file, one step, finished', async () => {
    await run()
    const { rows } = await client.query(
      `select migration_name, checksum, applied_steps_count, finished_at >= started_at as finished, rolled_back_at, logs
       from _prisma_migrations order by migration_name limit 1`,
    )
    expect(rows).toEqual([
      {
        migration_name: '20260101000000_make_cups',
        // By `sha256sum` of GNU coreutils on the same text.
        checksum: 'ef842f3623b0f36961cccf70729d8c3216b10b36590fd09b7b7c4a30ca15e2ff',
        applied_steps_count: 1,
        finished: true,
        rolled_back_at: null,
        logs: null,
      },
    ])
  })

  it('lets two programs that migrate at once take turns', async () => {
    const both = await Promise.all([run(), run()])
    expect(both.map((applied) => applied.length).sort()).toEqual([0, 2])
  })

  it('undoes the whole of a file that fails, names its line, and keeps what came before', async () => {
    write('20260103000000_break', 'create table plate (name text);\ninsert into cup values (1, 2, 3);')
    await expect(run()).rejects.toThrow(
      /The migration 20260103000000_break failed \(line 2\): INSERT has more expressions .* The database is as it was before it\./,
    )
    expect(
      (await client.query("select to_regclass('plate') as plate, to_regclass('cup') as cup")).rows,
    ).toEqual([{ plate: null, cup: 'cup' }])
    expect((await client.query('select from _prisma_migrations')).rowCount).toBe(2)
  })

  it('takes a function body with semicolons in one piece', async () => {
    write(
      '20260103000000_count',
      'create function cups() returns bigint as $$ begin; return 1; end; $$ language plpgsql;'.replace(
        'begin;',
        'begin',
      ),
    )
    await run()
    expect((await client.query('select cups()')).rows).toEqual([{ cups: '1' }])
  })

  it('refuses a file that was edited after the database had it', async () => {
    await run()
    appendFileSync(join(folder, '20260101000000_make_cups', 'migration.sql'), '\n')
    await expect(run()).rejects.toThrow(
      'The migration 20260101000000_make_cups was edited after the database had it.',
    )
  })

  it('refuses a database that a newer version has migrated', async () => {
    await run()
    rmSync(join(folder, '20260102000000_add_size'), { recursive: true })
    await expect(run()).rejects.toThrow(
      'has had the migration 20260102000000_add_size, which this program does not know',
    )
  })

  it('refuses a database on which another program stopped half-way', async () => {
    await run()
    await client.query(
      "update _prisma_migrations set finished_at = null where migration_name like '%add_size'",
    )
    await expect(run()).rejects.toThrow('The migration 20260102000000_add_size was begun')
  })
})
