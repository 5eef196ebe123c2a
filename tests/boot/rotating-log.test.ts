import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { waitUntil } from '../../src/boot/processes.mjs'
import { RotatingLog } from '../../src/boot/rotating-log.mjs'

describe('the log', () => {
  let folder = ''
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'turnbook-log-'))
  })
  afterEach(() => rmSync(folder, { recursive: true }))

  it('never grows beyond its size, keeps a few before it, and is for its owner alone', () => {
    const file = join(folder, 'pages.log')
    const log = new RotatingLog(file, { mostBytes: 100 })
    for (let line = 0; line < 100; line++) log.write(`line ${String(line).padStart(3, '0')} …\n`)
    const names = readdirSync(folder).sort()
    expect(names).toEqual(['pages.log', 'pages.log.1', 'pages.log.2', 'pages.log.3', 'pages.log.4'])
    for (const name of names) {
      expect(statSync(join(folder, name)).size).toBeLessThanOrEqual(100)
      expect(statSync(join(folder, name)).mode & 0o777).toBe(0o600)
    }
    const told = names
      .toReversed()
      .map((name) => readFileSync(join(folder, name), 'utf8'))
      .join('')
    const numbers = [...told.matchAll(/line (\d+)/g)].map(([, number]) => Number(number))
    // Nothing between the oldest that is left and the newest is missing.
    expect(numbers).toEqual(Array.from(numbers, (_, place) => 100 - numbers.length + place))
  })

  it('goes on in the file that is there, and takes a stream line by line', async () => {
    const file = join(folder, 'pages.log')
    new RotatingLog(file).write('before\n')
    const heard: string[] = []
    new RotatingLog(file).take(Readable.from(['on', 'e\ntw', 'o\nthree']), (line: string) => heard.push(line))
    expect(await waitUntil(() => heard.length === 3, 2_000)).toBe(true)
    expect(readFileSync(file, 'utf8')).toBe('before\none\ntwo\nthree\n')
  })
})
