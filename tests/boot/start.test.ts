import { existsSync, statSync } from 'node:fs'
import { createServer, type Server } from 'node:net'
import { join } from 'node:path'
import { afterEach, describe, expect, inject, it } from 'vitest'
import { tryPort } from '../../src/boot/ports.mjs'
import { beginning, waitUntil } from '../../src/boot/processes.mjs'
import { firstPageStatus, Playground, postgresOf } from '../support/turnbook-process'

const playground = new Playground()
const book = () => playground.copyOf(inject('bookToCopy'))
afterEach(() => playground.clear())

function portOf(address: string): number {
  return Number(new URL(address).port)
}

describe('starting', () => {
  it('serves, says where and who can sign in, and stops without a trace on SIGTERM', async () => {
    const data = playground.folder()
    const turnbook = await (await playground.start({ data })).untilReady()
    expect(await firstPageStatus(turnbook.address)).toBe(200)
    const { headers } = await fetch(turnbook.address, { headers: { connection: 'close' } })
    expect(headers.get('cache-control')).toMatch(/no-store/)
    // What a page with children's names should say of itself: OWASP Secure Headers Project, from memory.
    expect(headers.get('x-content-type-options')).toBe('nosniff')
    expect(headers.get('x-frame-options')).toBe('DENY')
    expect(headers.get('content-security-policy')).toContain("frame-ancestors 'none'")
    expect(headers.get('referrer-policy')).toBe('same-origin')
    expect(turnbook.output).toContain('head coach, coach, parent')
    expect(statSync(join(data, 'secrets.json')).mode & 0o777).toBe(0o600)
    const postgres = await postgresOf(data)
    expect(postgres).not.toBeNull()

    expect(await turnbook.stop()).toBe(0)
    expect(await tryPort(portOf(turnbook.address))).not.toBeNull()
    expect(beginning(postgres ?? 0)).toBe('')
    expect(existsSync(join(data, 'lock.json'))).toBe(false)
  })

  it('does nothing twice: no second demo, no second set of secrets', async () => {
    const data = book()
    const made = statSync(join(data, 'secrets.json')).mtimeMs
    const turnbook = await (await playground.start({ data })).untilReady()
    expect(turnbook.output).not.toContain('loading the demo club')
    expect(turnbook.output).not.toContain('making the database')
    expect(statSync(join(data, 'secrets.json')).mtimeMs).toBe(made)
    expect(await firstPageStatus(turnbook.address)).toBe(200)
  })

  it('refuses to run twice on one data folder, and says where it runs', async () => {
    const data = book()
    const first = await (await playground.start({ data })).untilReady()
    const second = await playground.start({ data })
    expect(await second.ended()).toBe(3)
    expect(second.output).toContain(`already running at ${first.address} (process ${first.pid})`)
    expect(await firstPageStatus(first.address)).toBe(200)
  })

  it('stops on Ctrl+C', async () => {
    const data = book()
    const turnbook = await (await playground.start({ data })).untilReady()
    expect(await turnbook.pressCtrlC()).toBe(0)
    expect(turnbook.output).toContain('Stopping.')
    expect(await postgresOf(data)).toBeNull()
  })

  it('stops on Ctrl+C while it is still getting ready, and starts well the next time', async () => {
    const data = playground.folder()
    const hasty = await playground.start({ data })
    await waitUntil(
      () => existsSync(join(data, 'postgres.new')) || existsSync(join(data, 'postgres')),
      20_000,
    )
    await hasty.pressCtrlC()
    expect(hasty.output).toContain('Stopped before it was ready.')
    expect(await postgresOf(data)).toBeNull()
    const turnbook = await (await playground.start({ data, env: { TURNBOOK_DEMO: '0' } })).untilReady()
    // Nothing stands there: the first page leads to where a club is made, by the code that was printed.
    expect(await waitUntil(() => turnbook.output.includes('Ctrl+C stops it.'), 5_000)).toBe(true)
    expect(turnbook.output).toContain(`${turnbook.address}/set-up\n`)
    expect(turnbook.output).toMatch(/^ {2}([0-9A-Z]{4}-){6}[0-9A-Z]{4}$/m)
    const page = await fetch(turnbook.address, { headers: { connection: 'close' } })
    expect(page.url).toBe(`${turnbook.address}/set-up`)
    expect(await page.text()).toContain('Name of the club')
  })

  it('shows no demo where a club of people is wanted, and says what to do', async () => {
    const turnbook = await playground.start({ data: book(), env: { TURNBOOK_DEMO: '0' } })
    expect(await turnbook.ended()).toBe(1)
    expect(turnbook.output).toContain('The demo club stands in this database')
    expect(turnbook.output).toContain('TURNBOOK_DATA')
  })

  it('stops when npm, which started it, is ended', async () => {
    const data = book()
    const npm = await (await playground.start({ data, isByNpm: true })).untilReady()
    const { address } = npm
    process.kill(npm.pid, 'SIGTERM')
    expect(await waitUntil(async () => (await postgresOf(data)) === null, 10_000)).toBe(true)
    expect(await firstPageStatus(address)).toBe(0)
  })
})

describe('the port', () => {
  let other: Server | undefined
  afterEach(() => other?.close())

  function take(port: number): Promise<number> {
    return new Promise((done) => {
      other = createServer()
      other.once('error', () => done(port))
      other.listen(port, '127.0.0.1', () => {
        const address = other?.address()
        done(typeof address === 'object' && address ? address.port : port)
      })
    })
  }

  it('is refused when it was asked for and another program has it', async () => {
    const data = book()
    const port = await take(0)
    const turnbook = await playground.start({ data, env: { PORT: String(port) } })
    expect(await turnbook.ended()).toBe(1)
    expect(turnbook.output).toContain(`Port ${port} is taken by another program`)
    expect(await postgresOf(data)).toBeNull()
    expect(existsSync(join(data, 'lock.json'))).toBe(false)
  })

  it('is the next free one when none was asked for and 3000 is taken', async () => {
    await take(3000)
    const turnbook = await (await playground.start({ data: book(), env: { PORT: '' } })).untilReady()
    expect(portOf(turnbook.address)).toBeGreaterThan(3000)
    expect(turnbook.output).toContain('Port 3000 is taken by another program, so this is port')
  })

  it.each(['abc', '70000', '80.5'])('is refused when it is "%s"', async (PORT) => {
    const turnbook = await playground.start({ env: { PORT } })
    expect(await turnbook.ended()).toBe(1)
    expect(turnbook.output).toContain(`PORT is "${PORT}"; it should be a whole number from 1 to 65535.`)
  })
})
