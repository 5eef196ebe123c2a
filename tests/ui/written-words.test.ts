import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'

const root = path.resolve(import.meta.dirname, '../..')
const pages = ['src/ui', 'src/app'].flatMap((folder) =>
  readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => path.join(folder, name)),
)

/** What is left of a source without its comments, each run of blanks as one. */
const withoutComments = (source: string) =>
  source
    .replaceAll(/\/\*[\s\S]*?\*\//g, '')
    .replaceAll(/^\s*\/\/.*$/gm, '')
    .replaceAll(/\s+/g, ' ')

const findAll = (pattern: RegExp) =>
  pages.flatMap((page) =>
    (withoutComments(readFileSync(path.join(root, page), 'utf8')).match(pattern) ?? []).map(
      (found) => `${page}: ${found}`,
    ),
  )

describe('what is written on the pages', () => {
  it('is found', () => {
    expect(pages.length).toBeGreaterThan(100)
    expect(findAll(/that player’s even share/g)).toHaveLength(1)
  })

  it('has the curved apostrophe', () => {
    expect(findAll(/\S*\p{L}'\p{L}\S*/gu)).toEqual([])
  })

  it('never calls a player “it”', () => {
    expect(findAll(/(each|every|a|the) player (had|has|was|is)\b[^.<]*\bits?\b[^.<]*/g)).toEqual([])
  })
})
