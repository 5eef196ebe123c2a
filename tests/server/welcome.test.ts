import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { GET } from '#app/welcome/[code]/route'
import { changeAdult, findAdult } from '#data/adults'
import { recordGuardianships } from '#data/guardianships'
import { newId } from '#data/ids'
import { revokeLinks } from '#data/one-time-links'
import { type LinkCode, newSecret, textOfCode } from '#server/link-code'
import { makeFamilyLinkOf, makePersonLinkOf } from '#server/link-deeds'
import { takeTry } from '#server/rate-limit'
import { findLogin } from '#server/sign-in'
import { signInByPassword } from '#server/sign-in/sign-in-by-password'
import { deadLink } from '#server/spend-link'
import { findSignedIn } from '#server/viewer'
import { chooseNewPassword, signInOnTheWay, takeAsSignedIn, takeWithNewSignIn } from '#server/welcome-actions'
import { loadWelcome } from '#server/welcome-views'
import { formOfFields } from '../support/form-of-fields'
import { aLinkingClub, codeIn, type LinkingClub } from '../support/linking-club'
import { askAsPerson, askWithCookie, cookies, redirectOf } from '../support/next-request'
import { ownerDatabase } from '../support/test-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const idle = { status: 'idle' } as const
const address = 'https://book.example.org'
const dead = { status: 'refused', problems: [{ path: '', message: deadLink }] }
const password = 'seven quiet herons wade home'

const data = mkdtempSync(join(tmpdir(), 'turnbook-welcome-'))
process.env.TURNBOOK_DATA = data
afterAll(() => rmSync(data, { recursive: true, force: true }))
const mails = () => {
  const folder = join(data, 'outbox')
  return readdirSync(folder).map((name) => readFileSync(join(folder, name), 'utf8'))
}

let at: LinkingClub
let email = ''
beforeEach(async () => {
  at = await aLinkingClub()
  email = `parent-${newId()}@example.org`
  askAsPerson(null)
  await at.run((tx) => recordGuardianships(tx, [{ personId: at.guardianId, playerId: at.childId }]))
})

const familyLink = async (how: 'show' | 'mail' = 'show') =>
  makeFamilyLinkOf(await at.viewerOf(at.coach.personId), {
    ...{ personId: at.guardianId, playerId: at.childId, how, address },
  })
const open = (code: LinkCode) => askWithCookie('turnbook-welcome', textOfCode(code))
const press = async (door: typeof takeAsSignedIn, fields: Readonly<Record<string, string>> = {}) =>
  door(idle, formOfFields(fields)).catch((error) => redirectOf(error) ?? Promise.reject(error))

describe('opening a link', () => {
  it('only moves the code out of the address: nothing is looked up, nothing changes', async () => {
    const code = codeIn(await familyLink())
    const before = await ownerDatabase().oneTimeLink.findMany()
    const answer = await GET(new Request(`${address}/welcome/x`), {
      params: Promise.resolve({ code: textOfCode(code) }),
    })
    expect([answer.status, answer.headers.get('location')]).toEqual([303, '/welcome'])
    expect(answer.headers.get('referrer-policy')).toBe('no-referrer')
    expect(answer.headers.get('cache-control')).toBe('no-store')
    const cookie = answer.headers.getSetCookie().join()
    expect(cookie).toContain(code.secret)
    expect(cookie).toMatch(/HttpOnly/i)
    expect(cookie).toMatch(/Max-Age=1800/)
    expect(await ownerDatabase().oneTimeLink.findMany()).toEqual(before)
  })

  it('keeps nothing of what is no code', async () => {
    const params = Promise.resolve({ code: '..%2f<script>' })
    const cookie = (await GET(new Request(address), { params })).headers.getSetCookie().join()
    expect(cookie).not.toContain('script')
    expect(cookie).toMatch(/Expires=Thu, 01 Jan 1970|Max-Age=0/i)
  })

  it('says whose club it is and names no child, however often it is looked at', async () => {
    open(codeIn(await familyLink()))
    const looks = [await loadWelcome(), await loadWelcome()]
    const page = { clubName: 'Reedwater', kind: 'family', signedInAs: null, hasSignIn: false }
    expect(looks).toEqual([page, page])
    expect(JSON.stringify(looks)).not.toMatch(/Fenn/)
  })

  it('says nothing of a club to whoever has not the secret', async () => {
    const code = codeIn(await familyLink())
    open({ ...code, secret: newSecret() })
    expect(await loadWelcome()).toBeNull()
    open(code)
    await at.run((tx) => revokeLinks(tx, { linkId: code.linkId }, new Date()))
    expect(await loadWelcome()).toBeNull()
  })
})

describe('pressing the button', () => {
  it('makes the sign-in, opens the page, signs in anew, and asks by mail whether the address is right', async () => {
    const code = codeIn(await familyLink())
    open(code)
    expect(await press(takeWithNewSignIn, { email, password })).toBe(`/family/${at.childId}`)
    expect(await findSignedIn()).toMatchObject({ personId: at.guardianId, playerIds: [at.childId] })
    expect((await cookies()).get('turnbook-welcome')).toBeUndefined()
    expect(mails().some((mail) => mail.includes(email) && mail.includes('/verify/address.'))).toBe(true)
    // The same link again, by whoever has kept it.
    open(code)
    expect(await press(takeAsSignedIn)).toMatchObject(dead)
    askAsPerson(null)
    open(code)
    expect(await press(takeWithNewSignIn, { email: `x-${email}`, password })).toMatchObject(dead)
    expect(await ownerDatabase().login.count({ where: { email: `x-${email}` } })).toBe(0)
  })

  it('refuses a weak password with the link still good, and sends no password back', async () => {
    open(codeIn(await familyLink()))
    const weak = await press(takeWithNewSignIn, { email, password: 'reedwater' })
    expect(weak).toMatchObject({ status: 'refused', problems: [{ path: 'password' }], typed: { email } })
    expect(JSON.stringify(weak)).not.toMatch(/reedwater/)
    expect(await press(takeWithNewSignIn, { email, password })).toBe(`/family/${at.childId}`)
  })

  it('takes the code from the cookie alone, and no role, person or child that is sent along', async () => {
    const code = codeIn(await familyLink())
    const more = { code: textOfCode(code), personId: at.administratorId, playerId: at.playerIds[1] ?? '' }
    expect(await press(takeWithNewSignIn, { email, password, ...more })).toMatchObject(dead)
    open(code)
    await press(takeWithNewSignIn, { email, password, role: 'administrator', ...more })
    expect(await findSignedIn()).toMatchObject({ role: 'guardian', playerIds: [at.childId] })
  })

  it('two browsers at once: one gets the page, the other leaves no sign-in behind', async () => {
    open(codeIn(await familyLink()))
    const answers = await Promise.all([
      press(takeWithNewSignIn, { email, password }),
      press(takeWithNewSignIn, { email: `x-${email}`, password }),
    ])
    expect(answers.filter((answer) => answer === `/family/${at.childId}`)).toHaveLength(1)
    expect(answers.filter((answer) => typeof answer !== 'string')).toMatchObject([dead])
    const kept = await ownerDatabase().login.count({ where: { email: { in: [email, `x-${email}`] } } })
    expect(kept).toBe(1)
  })

  it('a coach who is a parent takes the page with the sign-in there is', async () => {
    const administrator = await at.viewerOf(at.administratorId)
    const asked = { personId: at.coach.personId, kind: 'join', how: 'show', address } as const
    open(codeIn(await makePersonLinkOf(administrator, asked)))
    expect(await press(takeWithNewSignIn, { email, password })).toBe(`/squads/${at.squadId}/today`)
    askAsPerson(null)
    open(codeIn(await familyLink()))
    expect(await press(takeAsSignedIn)).toMatchObject({ problems: [{ message: /signed out/ }] })
    expect(await press(signInOnTheWay, { email, password })).toBe('/welcome')
    expect(await loadWelcome()).toMatchObject({ signedInAs: expect.stringContaining(email) })
    const before = (await findLogin())?.sessionId
    expect(await press(takeAsSignedIn)).toBe(`/family/${at.childId}`)
    expect((await findLogin())?.sessionId).not.toBe(before)
    expect(await findSignedIn()).toMatchObject({ role: 'coach', playerIds: [at.childId] })
  })

  it('a new password replaces the old one, and signs nobody in', async () => {
    const administrator = await at.viewerOf(at.administratorId)
    const asked = { personId: at.coach.personId, how: 'show', address } as const
    open(codeIn(await makePersonLinkOf(administrator, { ...asked, kind: 'join' })))
    await press(takeWithNewSignIn, { email, password })
    const code = codeIn(await makePersonLinkOf(administrator, { ...asked, kind: 'recover' }))
    open(code)
    expect(await press(takeAsSignedIn)).toMatchObject(dead)
    const newer = 'nine amber lanterns drift past'
    expect(await press(chooseNewPassword, { password: 'short' })).toMatchObject({ status: 'refused' })
    expect(await press(chooseNewPassword, { password: newer })).toBe('/sign-in')
    expect(await findSignedIn()).toBeNull()
    askAsPerson(null)
    open(codeIn(await familyLink()))
    expect(await press(signInOnTheWay, { email, password })).toMatchObject({ status: 'refused' })
    expect(await press(signInOnTheWay, { email, password: newer })).toBe('/welcome')
  })
})

describe('who was shut out by somebody else’s guesses', () => {
  it('comes in again with the new password of a link by the administrator, its address never confirmed', async () => {
    const administrator = await at.viewerOf(at.administratorId)
    const asked = { personId: at.coach.personId, how: 'show', address } as const
    open(codeIn(await makePersonLinkOf(administrator, { ...asked, kind: 'join' })))
    await press(takeWithNewSignIn, { email, password })
    askAsPerson(null)
    // What ten and a hundred wrong passwords leave behind.
    for (const [what, most] of [
      ['passwordOfAddress', 10],
      ['passwordInAll', 100],
    ] as const)
      for (let tries = 0; tries < most; tries += 1) await takeTry({ what, key: email })
    expect(await signInByPassword({ email, password })).toMatchObject({
      reasons: [{ message: /tried too often/ }],
    })
    const newer = 'nine amber lanterns drift past'
    open(codeIn(await makePersonLinkOf(administrator, { ...asked, kind: 'recover' })))
    expect(await press(chooseNewPassword, { password: newer })).toBe('/sign-in')
    expect(await signInByPassword({ email, password: newer })).toEqual({ ok: true, value: null })
  })
})

describe('a mailed link', () => {
  it('goes to the address that is written down, names no child, and is not shown to who sent it', async () => {
    expect(await familyLink('mail')).toMatchObject({ reasons: [{ message: /No address/ }] })
    const to = { name: 'Mo Fenn', role: 'guardian', email } as const
    await at.run((tx) => changeAdult(tx, at.guardianId, to))
    const answer = await familyLink('mail')
    expect(answer).toMatchObject({ ok: true, value: { message: expect.stringMatching(/Mailed/) } })
    expect(JSON.stringify(answer)).not.toMatch(/welcome/)
    const mail = mails().find((one) => one.includes(email) && one.includes('Reedwater')) ?? ''
    // A mail's lines are broken by RFC 2045: "=" at their end is no part of the text.
    const text = mail.replace(/=\r?\n/g, '')
    expect(text).not.toMatch(/Ada/)
    const code = /\/welcome\/([\w.-]+)/.exec(text)?.[1] ?? ''
    askWithCookie('turnbook-welcome', code)
    expect(await press(takeWithNewSignIn, { email, password })).toBe(`/family/${at.childId}`)
    expect((await at.run((tx) => findAdult(tx, at.guardianId)))?.loginId).not.toBeNull()
  })
})
