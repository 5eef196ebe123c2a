import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { doorsOfForms, doorsOfPages } from './doors'

const filesIn = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((file) => join(folder, file))

/** What the framework serves by itself from a file of this name, by its documentation of file conventions. */
function addressOf(file: string): string | null {
  const [, folder = '', name = ''] = /^src\/app\/(?:(.*)\/)?([^/]+)$/.exec(file) ?? []
  const at = `/${folder.replace(/\([^)]*\)\/?/g, '')}`
  if (/^(?:page\.(?:tsx|ts|jsx|js|mdx)|route\.(?:ts|js))$/.test(name)) return at
  const before = at === '/' ? '' : at
  if (/^manifest\.(?:ts|js|json|webmanifest)$/.test(name)) return `${before}/manifest.webmanifest`
  if (/^(?:icon|apple-icon|favicon|opengraph-image|twitter-image|sitemap|robots)\d?\./.test(name))
    return `${before}/${name}`
  return null
}

/** The exports of every file that begins as a file of doors does. */
function formsIn(file: string): readonly string[] {
  const text = readFileSync(file, 'utf8')
  if (!/^\s*['"]use server['"]/m.test(text)) return []
  return [...text.matchAll(/^export (?:async )?(?:const|function) (\w+)/gm)].map(([, name = '']) => name)
}

const sorted = (names: readonly string[]) => [...new Set(names)].sort()

describe('the list of doors', () => {
  it('has every page and route, and none that is gone', () => {
    const found = filesIn('src/app').flatMap((file) => addressOf(file) ?? [])
    expect(found.length).toBeGreaterThan(50)
    expect(sorted(Object.keys(doorsOfPages))).toEqual(sorted(found))
  })

  it('has everything that a form can be sent to, and nothing that is gone', () => {
    const files = filesIn('src').filter((file) => /\.tsx?$/.test(file))
    const found = files.flatMap(formsIn)
    expect(found.length).toBeGreaterThan(60)
    expect(sorted(Object.keys(doorsOfForms))).toEqual(sorted(found))
    // By their names they are found in a build: no two may have the same.
    expect(found).toHaveLength(new Set(found).size)
  })

  it('is not passed by: there is no other kind of door', () => {
    const files = filesIn('src').filter((file) => /\.tsx?$/.test(file))
    const within = files.filter((file) => /^\s+['"]use server['"]/m.test(readFileSync(file, 'utf8')))
    expect(within).toEqual([])
    expect(readdirSync('src')).not.toContain('pages')
  })
})
