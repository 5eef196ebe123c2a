import { readdir, readFile } from 'node:fs/promises'
import { describe, expect, it } from 'vitest'
import { askAs } from '../support/ask-as'
import { testDatabase } from '../support/test-database'

describe('every check and exclusion of the database', () => {
  it('is held by a test that sees it refuse', async () => {
    const files = (await readdir(import.meta.dirname)).filter((name) => name.startsWith('guards-of-'))
    const texts = await Promise.all(files.map((name) => readFile(new URL(name, import.meta.url), 'utf8')))
    const tests = texts.join('')
    const names = await askAs(testDatabase().ownerUrl, async (client) => {
      const { rows } = await client.query<{ name: string }>(
        `select conname as name from pg_constraint
         where contype in ('c', 'x') and connamespace = 'public'::regnamespace`,
      )
      return rows.map(({ name }) => name)
    })
    expect(names.length).toBeGreaterThan(50)
    expect(names.filter((name) => !tests.includes(`'${name}'`))).toEqual([])
  })
})
