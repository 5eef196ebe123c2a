import { readFileSync } from 'node:fs'
import { request } from 'node:http'
import { connect } from 'node:net'
import { join } from 'node:path'
import { text } from 'node:stream/consumers'
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest'
import { pause } from '../../src/boot/processes.mjs'
import { Playground, type TurnbookProcess } from '../support/turnbook-process'

const playground = new Playground()
const own = 'book.example.org'
const secret = 'k3eP-tHis-Out-0f-the-L0g-aAbBcCdDeEfF0123456789'
let turnbook: TurnbookProcess
let data = ''

beforeAll(async () => {
  data = playground.copyOf(inject('bookToCopy'))
  const env = { TURNBOOK_URL: `https://${own}`, TURNBOOK_CONTACT: 'safety@club.example' }
  turnbook = await (await playground.start({ data, env })).untilReady()
})
afterAll(() => playground.clear())

const port = () => Number(new URL(turnbook.address).port)

type Asked = {
  readonly host?: string
  readonly method?: string
  readonly headers?: Record<string, string>
  readonly body?: string
}

async function ask(path: string, { host = own, method = 'GET', headers = {}, body = '' }: Asked = {}) {
  return new Promise<{ status: number; headers: NodeJS.Dict<string | string[]>; body: string }>(
    (done, fail) => {
      const asked = request(
        { port: port(), host: '127.0.0.1', path, method, agent: false, headers: { ...headers, host } },
        async (response) =>
          done({ status: response.statusCode ?? 0, headers: response.headers, body: await text(response) }),
      )
      asked.once('error', fail)
      asked.end(body)
    },
  )
}

describe('behind an https address', () => {
  it('every page says what it may load, that it is never to be kept, and that it is for https only', async () => {
    const { headers } = await ask('/')
    expect(headers['cache-control']).toMatch(/no-store/)
    // ASVS 5.0, 3.4.1: at least one year.
    expect(headers['strict-transport-security']).toMatch(/^max-age=63072000\b/)
    const policy = String(headers['content-security-policy'])
    // ASVS 5.0, 3.4.3 and 3.4.6; 3.4.3 asks for at least these two.
    for (const part of [
      "object-src 'none'",
      "base-uri 'none'",
      "frame-ancestors 'none'",
      'upgrade-insecure-requests',
    ])
      expect(policy).toContain(part)
    expect(policy).not.toMatch(/script-src[^;]*'unsafe-(?:inline|eval)'/)
    const again = await ask('/')
    expect(again.headers['content-security-policy']).not.toBe(policy)
  })

  it('what is no page has a policy too, and runs nothing', async () => {
    const { headers, status } = await ask('/api/health')
    expect(status).toBe(200)
    expect(headers['content-security-policy']).toContain("default-src 'none'")
    expect(headers['x-content-type-options']).toBe('nosniff')
  })

  it('another host is refused, so that no link is made from it', async () => {
    expect((await ask('/', { host: 'evil.example' })).status).toBe(421)
    expect((await ask('/', { headers: { 'x-forwarded-host': 'evil.example' } })).status).toBe(421)
  })

  it('says whom to tell of a hole', async () => {
    const { body, status } = await ask('/.well-known/security.txt')
    expect(status).toBe(200)
    expect(body).toContain('Contact: mailto:safety@club.example\r\n')
  })

  it('says that it lives and that it is ready, and nothing more', async () => {
    expect(await ask('/api/health')).toMatchObject({ status: 200, body: 'alive\n' })
    expect(await ask('/api/ready')).toMatchObject({ status: 200, body: 'ready\n' })
  })
})

describe('the cookie of a sign-in', () => {
  it('is for https, this very host and no script', async () => {
    const page = (await ask('/')).body
    const form = page.split('<form')[1]?.split('</form>')[0] ?? ''
    const fields = [...form.matchAll(/name="([^"]+)"(?: value="([^"]*)")?/g)]
    const part = ([, name = '', value = '']: RegExpMatchArray) =>
      `--x\r\ncontent-disposition: form-data; name="${name}"\r\n\r\n${value}\r\n`
    const headers = { 'content-type': 'multipart/form-data; boundary=x', origin: `https://${own}` }
    const sent = { method: 'POST', headers, body: `${fields.map(part).join('')}--x--\r\n` }
    const given = await ask('/', sent)
    expect(given.status).toBe(303)
    const [cookie = ''] = [given.headers['set-cookie'] ?? []].flat()
    // RFC 6265bis, 4.1.3.2: the prefix holds with Secure, Path=/ and no Domain.
    expect(cookie).toMatch(/^__Host-turnbook=/)
    for (const attribute of [/; Secure/i, /; HttpOnly/i, /; SameSite=lax/i, /; Path=\/(?:;|$)/i])
      expect(cookie).toMatch(attribute)
    expect(cookie).not.toMatch(/; Domain/i)
    // The same form from a page of another address signs nobody in.
    const elsewhere = await ask('/', { ...sent, headers: { ...headers, origin: 'https://evil.example' } })
    expect(elsewhere.status).not.toBe(303)
    expect(elsewhere.headers['set-cookie']).toBeUndefined()
  })
})

describe('what was not meant to be served', () => {
  // ASVS 5.0, 13.4.1 and 13.4.3, and the OWASP Web Security Testing Guide, WSTG-CONF-04, from memory.
  it.each([
    '/.git/config',
    '/.env',
    '/package.json',
    '/prisma/schema.prisma',
    '/secrets.json',
    '/.next/BUILD_ID',
    '/_next/static',
    '/_next/static/../../secrets.json',
    '/..%2f..%2fpackage.json',
    '/icons',
  ])('%s is not', async (path) => {
    const { status, body } = await ask(path)
    expect(status).toBeGreaterThanOrEqual(400)
    expect(status).toBeLessThan(500)
    expect(body).not.toMatch(/repository|"name": "turnbook"|generator client|cookieSecret/)
  })
})

describe('the log of the pages', () => {
  it('has none of what was sent to open something, and one line for each request', async () => {
    const cookie = `turnbook=${secret}`
    await ask(`/welcome/${secret}`, { headers: { cookie } })
    await ask(`/join/${secret}`)
    await ask(`/?code=${secret}&name=Wren+Hollowbrook`)
    await ask(`/api/auth/x?token=${secret}`, {
      method: 'POST',
      headers: { authorization: secret },
      body: `{"password":"${secret}"}`,
    })
    await ask('/sign-in', {
      method: 'POST',
      headers: { 'content-type': 'application/x-www-form-urlencoded', 'next-action': secret },
      body: `password=${secret}`,
    })
    await pause(300)
    const log = readFileSync(join(data, 'pages.log'), 'utf8')
    expect(log).not.toContain(secret)
    expect(log).not.toContain('Hollowbrook')
    const lines = log
      .split('\n')
      .filter((line) => line.startsWith('{'))
      .map((line) => JSON.parse(line))
    expect(lines.filter(({ path }) => path === '/join/[code]')).toHaveLength(1)
    expect(turnbook.output).not.toContain(secret)
  })
})

describe('too much', () => {
  it('is refused with a sentence before it is read, and an endless upload is cut off', async () => {
    const huge = await ask('/squads/x/files', { method: 'POST', headers: { 'content-length': '50000000' } })
    expect(huge).toMatchObject({ status: 413, body: expect.stringContaining('at most') })
    const written = await endless()
    expect(written).toBeLessThan(40_000_000)
    expect((await ask('/api/ready')).status).toBe(200)
  })

  /** How many bytes could be sent of an upload that never ends. */
  function endless(): Promise<number> {
    return new Promise((done) => {
      const socket = connect(port(), '127.0.0.1')
      socket.on('error', () => undefined)
      socket.on('close', () => done(socket.bytesWritten))
      socket.write(`POST /api/pitch/x HTTP/1.1\r\nhost: ${own}\r\norigin: https://${own}\r\n`)
      socket.write('content-type: application/json\r\ntransfer-encoding: chunked\r\n\r\n')
      const chunk = `10000\r\n${' '.repeat(0x10000)}\r\n`
      const more = () => {
        while (socket.writable && socket.write(chunk));
      }
      socket.on('drain', more)
      more()
    })
  }
})

describe('stopping', () => {
  it('what is on its way is still answered, and nobody new is', async () => {
    const body = '{"deviceId":"x"}'
    let heard = ''
    const socket = connect(port(), '127.0.0.1')
    const closed = new Promise((done) => socket.once('close', done))
    socket.on('data', (part) => {
      heard += part
    })
    socket.on('error', () => undefined)
    socket.write(
      `POST /api/pitch/x HTTP/1.1\r\nhost: ${own}\r\norigin: https://${own}\r\nconnection: close\r\n`,
    )
    socket.write(
      `content-type: application/json\r\ncontent-length: ${body.length}\r\n\r\n${body.slice(0, 5)}`,
    )
    await pause(200)
    const ended = turnbook.stop()
    await pause(500)
    await expect(ask('/api/health')).rejects.toThrow()
    socket.write(body.slice(5))
    await closed
    expect(heard).toMatch(/^HTTP\/1\.1 4\d\d [\s\S]*"why":/)
    expect(await ended).toBe(0)
  })
})
