import { chownSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, inject, it } from 'vitest'
import { tryPort } from '../../src/boot/ports.mjs'
import { beginning, waitUntil } from '../../src/boot/processes.mjs'
import { firstPageStatus, Playground, postgresOf, type TurnbookProcess } from '../support/turnbook-process'

const playground = new Playground()
const book = () => playground.copyOf(inject('bookToCopy'))
afterEach(() => playground.clear())

/** An ended process that nobody has asked after still has its number, but no beginning. */
function hasEnded(pid: number | null): boolean {
  return pid !== null && beginning(pid) === ''
}

async function answersAgain(turnbook: TurnbookProcess): Promise<boolean> {
  return waitUntil(async () => (await firstPageStatus(turnbook.address)) === 200, 15_000)
}

describe('being killed', () => {
  it('the supervisor: the pages go with it, and the next start takes the database over', async () => {
    const data = book()
    const killed = await (await playground.start({ data })).untilReady()
    const orphan = await postgresOf(data)
    await killed.stop('SIGKILL')
    const port = Number(new URL(killed.address).port)
    expect(await waitUntil(async () => (await tryPort(port)) !== null, 5000)).toBe(true)
    expect(hasEnded(orphan)).toBe(false)

    const turnbook = await (await playground.start({ data, env: { PORT: String(port) } })).untilReady()
    expect(hasEnded(orphan)).toBe(true)
    expect(await firstPageStatus(turnbook.address)).toBe(200)
    expect(turnbook.output).not.toContain('loading the demo club')
  })

  it('the database, while serving: it comes back and the pages answer', async () => {
    const data = book()
    const turnbook = await (await playground.start({ data })).untilReady()
    const killed = await postgresOf(data)
    process.kill(killed ?? 0, 'SIGKILL')
    expect(await waitUntil(() => turnbook.output.includes('The database is back.'), 15_000)).toBe(true)
    expect(await answersAgain(turnbook)).toBe(true)
    expect(await postgresOf(data)).not.toBe(killed)
    expect(await turnbook.stop()).toBe(0)
    expect(await postgresOf(data)).toBeNull()
  })

  it('the server of the pages: it comes back at the same address', async () => {
    const turnbook = await (await playground.start({ data: book() })).untilReady()
    const children = readFileSync(`/proc/${turnbook.pid}/task/${turnbook.pid}/children`, 'utf8')
      .trim()
      .split(' ')
    const pages = children.find((pid) => readFileSync(`/proc/${pid}/cmdline`, 'utf8').includes('next'))
    process.kill(Number(pages), 'SIGKILL')
    expect(await waitUntil(() => turnbook.output.includes('The server of the pages is back.'), 15_000)).toBe(
      true,
    )
    expect(await answersAgain(turnbook)).toBe(true)
  })

  it('everything at once, leaving a note that names a process of another program', async () => {
    const data = book()
    const killed = await (await playground.start({ data })).untilReady()
    const postgres = (await postgresOf(data)) ?? 0
    await killed.stop('SIGKILL')
    process.kill(postgres, 'SIGKILL')
    await waitUntil(() => hasEnded(postgres), 5000)
    const note = join(data, 'postgres/postmaster.pid')
    const cluster = statSync(join(data, 'postgres'))
    writeFileSync(note, `${process.pid}\n${join(data, 'postgres')}\n`, { mode: 0o600 })
    chownSync(note, cluster.uid, cluster.gid)

    const turnbook = await (await playground.start({ data })).untilReady()
    expect(await firstPageStatus(turnbook.address)).toBe(200)
  })

  it('with a lock left whose process number another program has now', async () => {
    const data = book()
    writeFileSync(
      join(data, 'lock.json'),
      JSON.stringify({ pid: process.pid, beginning: 'long ago', address: null }),
    )
    const turnbook = await (await playground.start({ data })).untilReady()
    expect(await firstPageStatus(turnbook.address)).toBe(200)
  })
})
