import type pg from 'pg'
import { describe, expect, it } from 'vitest'
import { askAs } from '../support/ask-as'
import { readPrismaSchema, type Schema, type SchemaTable } from '../support/prisma-schema'
import { testDatabase } from '../support/test-database'

const asked = readPrismaSchema(new URL('../../prisma/schema.prisma', import.meta.url))

/** The same, as the migrated database has it. */
async function readDatabase(client: pg.Client): Promise<Schema> {
  const ask = async <Row extends object>(text: string) => (await client.query<Row>(text)).rows
  const columns = await ask<{ table: string } & SchemaTable['columns'][number]>(`
    select c.relname as table, a.attname as name, format_type(a.atttypid, a.atttypmod) as type,
      not a.attnotnull as "isNullable", a.atthasdef as "hasDefault"
    from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped
    where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' order by a.attnum`)
  const indexes = await ask<{ table: string; columns: string[]; isKey: boolean; isUnique: boolean }>(`
    select c.relname as table, i.indisprimary as "isKey", i.indisunique as "isUnique",
      array(select a.attname::text from unnest(i.indkey) with ordinality k (num, place)
        join pg_attribute a on a.attrelid = c.oid and a.attnum = k.num order by place) as columns
    from pg_index i join pg_class c on c.oid = i.indrelid join pg_class own on own.oid = i.indexrelid
    where c.relnamespace = 'public'::regnamespace and not i.indisexclusion order by own.relname`)
  const references = await ask<{ table: string; own: string; target: string; theirs: string }>(`
    select o.conrelid::regclass::text as table, o.confrelid::regclass::text as target,
      (select string_agg(a.attname, ',' order by place) from unnest(o.conkey) with ordinality k (num, place)
        join pg_attribute a on a.attrelid = o.conrelid and a.attnum = k.num) as own,
      (select string_agg(a.attname, ',' order by place) from unnest(o.confkey) with ordinality k (num, place)
        join pg_attribute a on a.attrelid = o.confrelid and a.attnum = k.num) as theirs
    from pg_constraint o where o.contype = 'f'`)
  const enums = await ask<{ name: string; values: string[] }>(`
    select t.typname as name, array_agg(e.enumlabel::text order by e.enumsortorder) as values
    from pg_enum e join pg_type t on t.oid = e.enumtypid group by 1`)
  const plain = (name: string) => name.replaceAll('"', '')
  const tables = [...new Set(columns.map(({ table }) => table))].filter(
    (table) => table !== '_prisma_migrations',
  )
  return {
    enums: Object.fromEntries(enums.map(({ name, values }) => [name, values])),
    tables: Object.fromEntries(
      tables.map((table) => {
        const own = indexes.filter((index) => index.table === table)
        return [
          table,
          {
            columns: columns
              .filter((column) => column.table === table)
              .map(({ table: _table, ...column }) => column),
            key: own.find(({ isKey }) => isKey)?.columns ?? [],
            uniques: own.filter(({ isKey, isUnique }) => isUnique && !isKey).map((index) => index.columns),
            indexes: own.filter(({ isUnique }) => !isUnique).map((index) => index.columns),
            references: references
              .filter((one) => plain(one.table) === table)
              .map((one) => [one.own, plain(one.target), one.theirs] as const),
          },
        ]
      }),
    ),
  }
}

const found = await askAs(testDatabase().ownerUrl, readDatabase)

/** Unique indexes that Prisma's schema has no use for, made by the migrations alone. */
const onlyInDatabase: Readonly<Record<string, readonly string[]>> = {
  TurnSeat: ['clubId,turnEventId,station,role,place'],
}

// A column that a later migration adds stands last in the database, wherever the schema names it.
const byName = (columns: SchemaTable['columns']) => new Map(columns.map((column) => [column.name, column]))
const sorted = (lists: readonly (readonly string[])[]) => lists.map((list) => list.join()).sort()

describe('prisma/schema.prisma and the migrations', () => {
  it('have the same tables and lists of values', () => {
    expect(Object.keys(asked.tables).length).toBeGreaterThan(20)
    expect(Object.keys(found.tables).sort()).toEqual(Object.keys(asked.tables).sort())
    expect(found.enums).toEqual(asked.enums)
  })

  it.each(Object.keys(asked.tables))('agree on %s', (name) => {
    const want = asked.tables[name] as SchemaTable
    const have = found.tables[name] as SchemaTable
    expect(byName(have.columns)).toEqual(byName(want.columns))
    expect(have.key).toEqual(want.key)
    expect(sorted(have.indexes)).toEqual(sorted(want.indexes))
    expect(sorted(have.uniques)).toEqual([...sorted(want.uniques), ...(onlyInDatabase[name] ?? [])].sort())
    expect(sorted(have.references)).toEqual(sorted(want.references))
  })
})
