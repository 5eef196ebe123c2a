import { execFileSync } from 'node:child_process'
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { canReach } from '../../src/boot/postgres-account.mjs'
import { clusterParent } from '../../src/boot/postgres-programs.mjs'
import { commandLine } from '../../src/boot/processes.mjs'
import { firstPageStatus, Playground, postgresOf } from '../support/turnbook-process'

const playground = new Playground()
afterEach(() => playground.clear())

const nobody = { uid: 65534, gid: 65534 }
const systemFolder = '/var/lib/turnbook'

function copiedPrograms(): string[] {
  return existsSync(systemFolder)
    ? readdirSync(systemFolder).filter((name) => name.startsWith('postgresql-'))
    : []
}

/** What is tried here does not need the demo, and is quicker without. */
const env = { TURNBOOK_DEMO: '0' }
const isRoot = process.getuid?.() === 0

describe('the data folder', () => {
  it('is refused when it cannot be made', async () => {
    const turnbook = await playground.start({ data: '/proc/turnbook' })
    expect(await turnbook.ended()).toBe(1)
    expect(turnbook.output).toMatch(
      /The data folder \/proc\/turnbook cannot be written to \(E[A-Z]+\)\. Set TURNBOOK_DATA/,
    )
  })

  it('is refused when it is a file, which is left as it was', async () => {
    const data = join(playground.folder(), 'list.txt')
    writeFileSync(data, 'names', { mode: 0o600 })
    const turnbook = await playground.start({ data })
    expect(await turnbook.ended()).toBe(1)
    expect(turnbook.output).toContain(`The data folder ${data} is a file. Set TURNBOOK_DATA to a folder`)
    expect(statSync(data).mode & 0o777).toBe(0o600)
  })

  it('is refused when its secrets are gone and its database is not', async () => {
    const data = playground.folder()
    mkdirSync(join(data, 'postgres'))
    const turnbook = await playground.start({ data })
    expect(await turnbook.ended()).toBe(1)
    expect(turnbook.output).toContain(
      'secrets.json is missing, and it holds the passwords of the database beside it',
    )
  })

  it('may hold a database whose making was cut short', async () => {
    const data = playground.folder()
    mkdirSync(join(data, 'postgres.new'))
    writeFileSync(join(data, 'postgres.new', 'PG_VERSION'), '18\n')
    const turnbook = await (await playground.start({ data, env })).untilReady()
    expect(await firstPageStatus(turnbook.address)).toBe(200)
    expect(existsSync(join(data, 'postgres.new'))).toBe(false)
  })
})

// Only root can become somebody else; whoever else runs the tests is the "somebody else" of every other test.
if (isRoot) {
  describe('started by root', () => {
    it('runs PostgreSQL as somebody who is not', async () => {
      const data = playground.folder()
      await (await playground.start({ data, env })).untilReady()
      const pid = await postgresOf(data)
      expect(statSync(`/proc/${pid}`).uid).not.toBe(0)
    })

    it('copies the programs to where that account can reach them, when the project is closed to it', () => {
      const closed = mkdtempSync(join(tmpdir(), 'turnbook-closed-'))
      const before = copiedPrograms()
      try {
        cpSync('src/boot', join(closed, 'src/boot'), { recursive: true })
        symlinkSync(resolve('node_modules'), join(closed, 'node_modules'))
        chmodSync(closed, 0o700)
        const ask = `
          import { postgresPrograms } from ${JSON.stringify(join(closed, 'src/boot/postgres-programs.mjs'))}
          console.log(postgresPrograms(${JSON.stringify(nobody)}).postgres)`
        const program = execFileSync(process.execPath, ['--input-type=module', '--eval', ask], {
          encoding: 'utf8',
        }).trim()
        expect(program).toMatch(/^\/var\/lib\/turnbook\/postgresql-/)
        expect(execFileSync(program, ['--version'], { ...nobody, encoding: 'utf8' })).toContain(
          '(PostgreSQL) 18.',
        )
      } finally {
        rmSync(closed, { recursive: true })
        for (const name of copiedPrograms())
          if (!before.includes(name)) rmSync(join(systemFolder, name), { recursive: true })
      }
    })

    it('keeps the database where that account can reach it, when the data folder lies in a closed one', async () => {
      const closed = playground.folder()
      chmodSync(closed, 0o700)
      const data = join(closed, 'book')
      mkdirSync(data)
      const parent = clusterParent(data, nobody)
      try {
        expect(parent).toMatch(/^\/var\/lib\/turnbook\/book-/)
        const turnbook = await (await playground.start({ data, env })).untilReady()
        expect(await firstPageStatus(turnbook.address)).toBe(200)
        expect(existsSync(join(parent, 'postgres/PG_VERSION'))).toBe(true)
        await turnbook.stop()
      } finally {
        rmSync(parent, { recursive: true, force: true })
      }
    })
  })

  describe('started by somebody who is not root', () => {
    const isOpen = canReach(resolve('src/boot'), nobody)

    it('serves, with PostgreSQL under the same account; or the project is closed to others', async () => {
      if (!isOpen) {
        const refused = await playground.start({ account: nobody })
        expect(await refused.ended()).not.toBe(0)
        return
      }
      const data = playground.folder(nobody)
      const turnbook = await (await playground.start({ data, env, account: nobody })).untilReady()
      expect(await firstPageStatus(turnbook.address)).toBe(200)
      const pid = (await postgresOf(data)) ?? 0
      expect(statSync(`/proc/${pid}`).uid).toBe(nobody.uid)
      expect(commandLine(pid)).toContain(data)
      expect(await turnbook.stop()).toBe(0)
    })

    it('is told when the data folder cannot be written to', async () => {
      if (!isOpen) return expect(canReach(resolve('src/boot'), nobody)).toBe(false)
      const data = playground.folder()
      chmodSync(data, 0o555)
      const turnbook = await playground.start({ data, account: nobody })
      expect(await turnbook.ended()).toBe(1)
      expect(turnbook.output).toContain(
        `The data folder ${data} cannot be written to (EACCES). Set TURNBOOK_DATA`,
      )
    })
  })
}
