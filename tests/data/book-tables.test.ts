import { describe, expect, it } from 'vitest'
import { inOrderOfReference, listBookTables } from '#data/whole-book/book-tables'
import { askAs } from '../support/ask-as'
import { readPrismaSchema } from '../support/prisma-schema'
import { testDatabase } from '../support/test-database'

const schema = readPrismaSchema(new URL('../../prisma/schema.prisma', import.meta.url))

describe('the tables of a backup', () => {
  it('are all that the schema has, but sign-ins of the day', async () => {
    const { kept, passing } = await askAs(testDatabase().ownerUrl, listBookTables)
    expect([...kept, ...passing].map(({ name }) => name).sort()).toEqual(Object.keys(schema.tables).sort())
    expect(passing.map(({ name }) => name).sort()).toEqual(['LoginProof', 'LoginSession', 'RateLimit'])
    for (const { name, columns } of kept)
      expect([...columns].sort()).toEqual(schema.tables[name]?.columns.map((column) => column.name).sort())
  })

  it('stand in an order in which each refers to earlier ones only', async () => {
    const { kept } = await askAs(testDatabase().ownerUrl, listBookTables)
    const seen = new Set<string>()
    for (const { name } of kept) {
      for (const [, target] of schema.tables[name]?.references ?? [])
        if (target !== name) expect(seen).toContain(target)
      seen.add(name)
    }
  })

  it('are refused in a circle, by name', () => {
    const circle = [
      { name: 'a', refersTo: [] },
      { name: 'b', refersTo: ['c'] },
      { name: 'c', refersTo: ['b', 'a'] },
    ]
    expect(() => inOrderOfReference(circle)).toThrow('b, c')
    expect(inOrderOfReference(circle.slice(0, 1))).toHaveLength(1)
  })
})
