import { execFile } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { promisify } from 'node:util'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { takeLock } from '../../src/boot/lock.mjs'
import { beginning } from '../../src/boot/processes.mjs'

describe('a lock', () => {
  let folder: string
  let file: string
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'turnbook-lock-'))
    file = join(folder, 'lock.json')
  })
  afterEach(() => rmSync(folder, { recursive: true }))

  it('is had by one at a time, who can leave an address', () => {
    const lock = takeLock(file)
    if (lock.holder !== null) throw new Error('taken by nobody, and yet not to be had')
    lock.setAddress('http://localhost:3000')
    expect(takeLock(file).holder).toEqual({
      pid: process.pid,
      beginning: beginning(process.pid),
      address: 'http://localhost:3000',
    })
    lock.release()
    expect(takeLock(file).holder).toBeNull()
  })

  it.each([
    ['a process that is gone', { pid: 2 ** 22 + 1, beginning: 'x', address: null }],
    [
      'a process whose number was given out again',
      { pid: process.pid, beginning: 'another time', address: null },
    ],
  ])('left behind by %s is taken over', (_, holder) => {
    writeFileSync(file, JSON.stringify(holder))
    expect(takeLock(file).holder).toBeNull()
  })

  it('that cannot be read is taken over', () => {
    writeFileSync(file, '')
    expect(takeLock(file).holder).toBeNull()
  })

  it('is taken over by one of many that try at once', async () => {
    writeFileSync(file, JSON.stringify({ pid: process.pid, beginning: 'another time', address: null }))
    // Each waits for the same moment, tries, and lives on long enough for the others to see it.
    const attempt = `
      import { takeLock } from ${JSON.stringify(resolve('src/boot/lock.mjs'))}
      const moment = ${Date.now() + 1200}
      while (Date.now() < moment);
      const { holder } = takeLock(${JSON.stringify(file)})
      console.log(holder === null ? 'taken' : 'refused')
      setTimeout(() => {}, 1500)`
    const attempts = Array.from({ length: 8 }, () =>
      promisify(execFile)(process.execPath, ['--input-type=module', '--eval', attempt]),
    )
    const answers = (await Promise.all(attempts)).map(({ stdout }) => stdout.trim())
    expect(answers.filter((answer) => answer === 'taken')).toHaveLength(1)
    expect(answers.filter((answer) => answer === 'refused')).toHaveLength(7)
    expect(readdirSync(folder)).toEqual(['lock.json'])
  })

  it('of another is not released', () => {
    const lock = takeLock(file)
    writeFileSync(file, JSON.stringify({ pid: 1, beginning: beginning(1), address: null }))
    if (lock.holder === null) lock.release()
    expect(existsSync(file)).toBe(true)
  })
})
