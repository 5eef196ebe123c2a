import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { appDatabase } from '#data/database'
import { closeTriesPool } from '#data/tries-pool'
import { findLogin, makeLogin, openSession } from '#server/sign-in'
import {
  mailAddressLink,
  mailLink,
  partsOfMailed,
  setPasswordByLink,
  signInByLink,
  verifyByLink,
} from '#server/sign-in/mailed-links'
import { loginOfPassword } from '#server/sign-in/with-password'
import { askAsPerson } from '../../support/next-request'

vi.mock('next/headers', () => import('../../support/next-request'))

const email = 'una.brook@example.org'
const at = { email, address: 'https://book.example.org' }
const folder = mkdtempSync(join(tmpdir(), 'turnbook-outbox-'))
const outbox = join(folder, 'outbox')
let loginId = ''

beforeAll(async () => {
  process.env.TURNBOOK_DATA = folder
  askAsPerson(null)
  const made = await makeLogin({ email, name: 'Una Brook', password: 'seven quiet herons over marl' })
  if (!made.ok) throw new Error('no sign-in')
  loginId = made.value.loginId
})
beforeEach(async () => {
  askAsPerson(null)
  rmSync(outbox, { recursive: true, force: true })
  await appDatabase().rateLimit.deleteMany()
})
afterAll(async () => {
  rmSync(folder, { recursive: true, force: true })
  await closeTriesPool()
})

/** Mails are sent after the answer: waits for as many, or for a while where none may come. */
async function mails(count: number): Promise<readonly string[]> {
  const list = () => {
    try {
      return readdirSync(outbox).filter((name) => name.endsWith('.eml'))
    } catch {
      return []
    }
  }
  for (let tries = 0; tries < 50 && (count === 0 ? tries < 10 : list().length < count); tries += 1)
    await new Promise((resolve) => setTimeout(resolve, 20))
  return list().map((name) => {
    expect(statSync(join(outbox, name)).mode & 0o777).toBe(0o600)
    // Quoted-printable (RFC 2045, 6.7) breaks long lines with an equals sign at their end.
    return readFileSync(join(outbox, name), 'utf8').replaceAll('=\r\n', '').replaceAll('=3D', '=')
  })
}

function secretIn(mail: string | undefined): string {
  const code = /https:\/\/book\.example\.org\/verify\/(\S+)/.exec(mail ?? '')?.[1] ?? ''
  return partsOfMailed(code)?.secret ?? ''
}

describe('an address that was only typed', () => {
  it('gets no link to sign in and none to a new password, and the answer does not tell', async () => {
    const own = await mailLink('signIn', at)
    const nobody = await mailLink('signIn', { ...at, email: 'nobody@example.org' })
    expect(own).toEqual(nobody)
    await mailLink('newPassword', at)
    expect(await mails(0)).toEqual([])
  })

  it('is shown to be its owner’s by a link, in a browser that is signed in with it, and in no other', async () => {
    await openSession({ loginId, as: null })
    await mailAddressLink(at)
    const secret = secretIn((await mails(1))[0])
    expect(secret).not.toBe('')
    askAsPerson(null)
    expect((await verifyByLink(secret)).ok).toBe(false)
    expect(await signInByLink(secret)).toMatchObject({ ok: false })
    await openSession({ loginId, as: null })
    expect(await findLogin()).toMatchObject({ isEmailVerified: false })
    expect((await verifyByLink(secret)).ok).toBe(true)
    expect(await findLogin()).toMatchObject({ isEmailVerified: true })
  })
})

describe('a link by mail', () => {
  it('signs in once', async () => {
    await mailLink('signIn', at)
    const secret = secretIn((await mails(1))[0])
    expect(await findLogin()).toBeNull()
    expect((await signInByLink(secret)).ok).toBe(true)
    expect(await findLogin()).toMatchObject({ loginId })
    askAsPerson(null)
    expect((await signInByLink(secret)).ok).toBe(false)
    expect(await findLogin()).toBeNull()
  })

  it('sets a new password once; a weak one leaves it good', async () => {
    await mailLink('newPassword', at)
    const secret = secretIn((await mails(1))[0])
    const next = 'eleven ferries left at dusk'
    expect(await signInByLink(secret)).toMatchObject({ ok: false })
    expect(await setPasswordByLink({ secret, password: 'too short' })).toMatchObject({
      ok: false,
      reasons: [{ path: 'password' }],
    })
    expect((await setPasswordByLink({ secret, password: next })).ok).toBe(true)
    expect((await loginOfPassword({ email, password: next })).ok).toBe(true)
    expect((await setPasswordByLink({ secret, password: `${next} again` })).ok).toBe(false)
  })

  it('is sent a few times an hour to one address, and no oftener', async () => {
    for (let count = 0; count < 5; count += 1) expect((await mailLink('signIn', at)).ok).toBe(true)
    expect(await mailLink('signIn', at)).toMatchObject({ ok: false })
    expect(await mails(5)).toHaveLength(5)
  })
})

describe('a link that was mailed to an address the sign-in had before', () => {
  it('opens nothing, to sign in or to a new password', async () => {
    await appDatabase().login.update({ where: { id: loginId }, data: { email, emailVerified: true } })
    for (const purpose of ['signIn', 'newPassword'] as const) await mailLink(purpose, at)
    const sent = await mails(2)
    const signIn = secretIn(sent.find((mail) => mail.includes('/verify/signIn.')))
    const newPassword = secretIn(sent.find((mail) => mail.includes('/verify/newPassword.')))
    expect([signIn, newPassword]).not.toContain('')
    await appDatabase().login.update({ where: { id: loginId }, data: { email: 'una.new@example.org' } })
    expect((await signInByLink(signIn)).ok).toBe(false)
    const password = 'eleven ferries left at dusk'
    expect((await setPasswordByLink({ secret: newPassword, password })).ok).toBe(false)
    expect(await findLogin()).toBeNull()
  })
})
