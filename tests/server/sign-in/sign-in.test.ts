import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { appDatabase } from '#data/database'
import { closeTriesPool } from '#data/tries-pool'
import { takeTry } from '#server/rate-limit'
import { endSessionsOf, findLogin, leaveSession, makeLogin, openSession } from '#server/sign-in'
import { makeProof, takeProof } from '#server/sign-in/proofs'
import { loginOfPassword, setPassword } from '#server/sign-in/with-password'
import { askAsPerson, askWithCookie, cookieOptions, cookies } from '../../support/next-request'

vi.mock('next/headers', () => import('../../support/next-request'))

const password = 'seven quiet herons over marl'
let loginId = ''

beforeAll(async () => {
  askAsPerson(null)
  const made = await makeLogin({ email: ' Una.Brook@Example.org ', name: 'Una Brook', password })
  if (!made.ok) throw new Error(JSON.stringify(made.reasons))
  loginId = made.value.loginId
})
beforeEach(() => askAsPerson(null))
afterAll(closeTriesPool)

const cookie = async () => (await cookies()).get('turnbook')?.value ?? ''

describe('a sign-in', () => {
  it('is found by its address in any case and its password, and by no other', async () => {
    expect(await loginOfPassword({ email: 'UNA.brook@example.org', password })).toEqual({
      ok: true,
      value: { loginId },
    })
    const wrong = await loginOfPassword({ email: 'una.brook@example.org', password: `${password} ` })
    const nobody = await loginOfPassword({ email: 'nobody@example.org', password })
    expect(wrong.ok).toBe(false)
    expect(nobody).toEqual(wrong)
  })

  it('is made once for one address', async () => {
    const again = await makeLogin({ email: 'una.brook@example.org', name: 'Another', password })
    expect(again).toMatchObject({ ok: false, reasons: [{ path: 'email' }] })
  })

  it('opens with a new cookie each time, and the one before opens nothing', async () => {
    askWithCookie('turnbook', 'planted.by-somebody')
    await openSession({ loginId, as: null })
    const first = await cookie()
    expect(first).not.toContain('planted')
    expect(cookieOptions.get('turnbook')).toMatchObject({ httpOnly: true, sameSite: 'lax', path: '/' })
    expect(await findLogin()).toMatchObject({
      loginId,
      email: 'una.brook@example.org',
      isEmailVerified: false,
    })
    await openSession({ loginId, as: null })
    expect(await cookie()).not.toBe(first)
    askAsPerson(null)
    askWithCookie('turnbook', first)
    expect(await findLogin()).toBeNull()
  })

  it('keeps in the database nothing that opens it', async () => {
    await openSession({ loginId, as: null })
    const token = (await cookie()).split('.')[0] ?? ''
    expect(token).toHaveLength(32)
    const rows = await appDatabase().loginSession.findMany({ where: { loginId } })
    expect(rows.length).toBeGreaterThan(0)
    const methods = await appDatabase().loginMethod.findMany({ where: { loginId } })
    expect(JSON.stringify([rows, methods])).not.toContain(token)
    expect(JSON.stringify(methods)).not.toContain(password)
    for (const { token: kept } of rows) {
      askWithCookie('turnbook', `${kept}.${(await cookie()).split('.')[1]}`)
      expect(await findLogin()).toBeNull()
    }
  })

  it('ends on the server when it is left, and everywhere when asked', async () => {
    await openSession({ loginId, as: null })
    const kept = await cookie()
    await leaveSession()
    askWithCookie('turnbook', kept)
    expect(await findLogin()).toBeNull()
    askAsPerson(null)
    await openSession({ loginId, as: null })
    await endSessionsOf({ loginId })
    expect(await findLogin()).toBeNull()
  })

  it('takes a new password, and ends what was signed in by the old one', async () => {
    await openSession({ loginId, as: null })
    const weak = await setPassword({ loginId, password: 'passwordpassword' })
    expect(weak).toMatchObject({ ok: false, reasons: [{ path: 'password' }] })
    expect(await findLogin()).not.toBeNull()
    const next = 'eleven ferries left at dusk'
    expect(await setPassword({ loginId, password: next })).toEqual({ ok: true, value: null })
    expect(await findLogin()).toBeNull()
    expect((await loginOfPassword({ email: 'una.brook@example.org', password: next })).ok).toBe(true)
    expect((await setPassword({ loginId, password })).ok).toBe(true)
  })
})

describe('a proof', () => {
  it('is good once, for its own purpose, and stands in the database under another name', async () => {
    const secret = await makeProof('signIn', { value: loginId })
    expect(JSON.stringify(await appDatabase().loginProof.findMany())).not.toContain(secret)
    expect(await takeProof('address', secret)).toBeNull()
    const both = await Promise.all([takeProof('signIn', secret), takeProof('signIn', secret)])
    expect(both.filter((value) => value === loginId)).toHaveLength(1)
    expect(await takeProof('signIn', secret)).toBeNull()
  })
})

describe('tries', () => {
  it('are counted in the database, each thing by itself, and refused with the time to wait', async () => {
    const at = { what: 'mailToAddress', key: 'una.brook@example.org' } as const
    for (let count = 0; count < 5; count += 1) expect(await takeTry(at)).toEqual({ ok: true })
    const answer = await takeTry(at)
    expect(answer.ok).toBe(false)
    expect(!answer.ok && answer.seconds).toBeGreaterThan(3000)
    expect(await takeTry({ ...at, key: 'other@example.org' })).toEqual({ ok: true })
    const rows = await appDatabase().rateLimit.findMany()
    expect(JSON.stringify(rows.map(({ key }) => key))).not.toContain('una.brook')
  })
})
