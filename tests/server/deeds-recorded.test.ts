import { existsSync, readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'

const folder = path.resolve(import.meta.dirname, '../../src/server')
const files = readdirSync(folder).filter((file) => file.endsWith('-actions.ts'))

type Named = { readonly file: string; readonly name: string }

function read(file: string): string {
  return readFileSync(path.join(folder, file), 'utf8')
}

/** What a file imports from its own folder, by the name it has here. */
function importsOf(text: string): ReadonlyMap<string, Named> {
  const found = new Map<string, Named>()
  for (const [, names = '', from] of text.matchAll(/import \{([^}]*)\} from '#server\/([\w/-]+)'/g))
    for (const one of names.split(',').filter((part) => part.trim() && !part.trim().startsWith('type '))) {
      const [name = '', local = name] = one.trim().split(' as ')
      found.set(local, { file: `${from}.ts`, name })
    }
  return found
}

/** The text of each thing that stands at the margin of a file, by its name. */
function partsOf(text: string): ReadonlyMap<string, string> {
  const parts = text.split(/^(?=(?:export )?(?:async )?(?:function|const) )/m).slice(1)
  return new Map(parts.map((part) => [/(?:function|const) (\w+)/.exec(part)?.[1] ?? '', part]))
}

/** Whether a thing, or whatever it calls, writes into the record. */
function isRecorded({ file, name }: Named, seen = new Set<string>()): boolean {
  const here = `${file} ${name}`
  if (seen.has(here) || !existsSync(path.join(folder, file))) return false
  seen.add(here)
  const text = read(file)
  const [parts, imports] = [partsOf(text), importsOf(text)]
  const body = parts.get(name) ?? ''
  if (/\brecordAudit\(/.test(body)) return true
  const words = new Set(body.match(/\b\w+\b/g))
  return [...words].some((word) => {
    if (word === name) return false
    const next = imports.get(word) ?? (parts.has(word) ? { file, name: word } : null)
    return next !== null && isRecorded(next, seen)
  })
}

const deeds = files.flatMap((file) =>
  [...read(file).matchAll(/^export const (\w+) = action\(/gm)].map(([, name = '']) => ({ file, name })),
)

describe('what a form does', () => {
  it('is written into the record by every form of a viewer', () => {
    expect(deeds.length).toBeGreaterThan(45)
    expect(deeds.filter((deed) => !isRecorded(deed))).toEqual([])
  })

  it('is found missing where nothing is written', () => {
    expect(isRecorded({ file: 'first-page-views.ts', name: 'loadFirstPage' })).toBe(false)
    expect(isRecorded({ file: 'sign-in-actions.ts', name: 'leave' })).toBe(false)
  })
})
