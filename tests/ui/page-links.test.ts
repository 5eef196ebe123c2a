import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { expect, it } from 'vitest'

const source = path.resolve(import.meta.dirname, '../../src')
const wrappers = ['ui/page/link-pending.tsx', 'ui/page/page-link.tsx']
const read = (file: string) => readFileSync(path.join(source, file), 'utf8')

// A page that is fetched before anybody follows its link would stand in the record as looked at.
it('every link waits until it is followed', () => {
  const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter((file) =>
    /\.tsx?$/.test(file),
  )
  expect(files.filter((file) => read(file).includes("'next/link'")).sort()).toEqual(wrappers)
  expect(files.filter((file) => /\bprefetch\(|\bprefetch=\{(?!false)/.test(read(file)))).toEqual([])
  expect(read('ui/page/page-link.tsx')).toMatch(/<Link prefetch=\{false\}/)
})
