import 'server-only'
import type pg from 'pg'
import type { BackupClub, BackupMigration, BackupTable } from '#exchange/backup/backup-shape'

/**
 * Left out of a backup, and emptied by a restore: nobody stays signed in through one, and what was tried too often or
 * waits for a mail is of the day. Every other table is in a backup by itself.
 */
export const passingTables: ReadonlySet<string> = new Set(['LoginSession', 'LoginProof', 'RateLimit'])

const notOfTheBook = new Set(['_prisma_migrations'])

export type BookTable = BackupTable & {
  /** Rows are read in this order, so that the same rows are the same text. */
  readonly orderBy: string
  readonly refersTo: readonly string[]
  /** Bound by row-level security, the owner too. */
  readonly isForced: boolean
}

export type BookTables = {
  /** In an order in which none refers to a later one. */
  readonly kept: readonly BookTable[]
  readonly passing: readonly BookTable[]
}

/** The tables of a book, as the database itself describes them. */
export async function listBookTables(client: pg.Client): Promise<BookTables> {
  const { rows } = await client.query<BookTable>(`
    select c.relname as name, c.relrowsecurity as "isByClub", c.relforcerowsecurity as "isForced",
      array(select a.attname::text from pg_attribute a
        where a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped and a.attgenerated = ''
        order by a.attnum) as columns,
      coalesce((select string_agg(format('%I', a.attname)
          || case when t.typcollation <> 0 then ' collate "C"' else '' end, ', ' order by k.place)
        from pg_index i, unnest(i.indkey) with ordinality k (num, place), pg_attribute a, pg_type t
        where i.indrelid = c.oid and i.indisprimary and a.attrelid = c.oid and a.attnum = k.num
          and t.oid = a.atttypid), '') as "orderBy",
      array(select distinct f.relname::text from pg_constraint o join pg_class f on f.oid = o.confrelid
        where o.conrelid = c.oid and o.contype = 'f' and f.oid <> c.oid order by 1) as "refersTo"
    from pg_class c
    where c.relnamespace = 'public'::regnamespace and c.relkind in ('r', 'p') and not c.relispartition
    order by c.relname collate "C"`)
  const tables = rows.filter(({ name }) => !notOfTheBook.has(name))
  for (const { name, orderBy, isByClub, columns } of tables) {
    if (orderBy === '') throw new Error(`table ${name} has no primary key to read it by`)
    if (isByClub && !columns.includes(clubColumn(name))) throw new Error(`rows of ${name} name no club`)
  }
  return {
    kept: inOrderOfReference(tables.filter(({ name }) => !passingTables.has(name))),
    passing: tables.filter(({ name }) => passingTables.has(name)),
  }
}

/** By which a table's rows belong to a club. */
export function clubColumn(table: string): string {
  return table === 'Club' ? 'id' : 'clubId'
}

/**
 * @throws when tables refer to each other in a circle, or to one that is not there.
 */
export function inOrderOfReference<Table extends Pick<BookTable, 'name' | 'refersTo'>>(
  tables: readonly Table[],
): readonly Table[] {
  const placed = new Set<string>()
  const ordered: Table[] = []
  while (ordered.length < tables.length) {
    const next = tables.find(
      ({ name, refersTo }) => !placed.has(name) && refersTo.every((other) => placed.has(other)),
    )
    if (!next) {
      const left = tables.filter(({ name }) => !placed.has(name)).map(({ name }) => name)
      throw new Error(`no order in which these tables refer to earlier ones only: ${left.join(', ')}`)
    }
    placed.add(next.name)
    ordered.push(next)
  }
  return ordered
}

/** Every club; the owner of the tables alone may ask. */
export async function listBookClubs(client: pg.Client): Promise<readonly BackupClub[]> {
  const { rows } = await client.query<BackupClub>('select id, name, "isDemo" from "Club" order by id')
  return rows
}

/** What has been done to the database, in order. */
export async function listBookMigrations(client: pg.Client): Promise<readonly BackupMigration[]> {
  const { rows } = await client.query<BackupMigration>(
    `select migration_name as name, checksum from _prisma_migrations
     where rolled_back_at is null order by migration_name collate "C"`,
  )
  return rows
}
