import { afterAll, beforeAll, beforeEach, expect, it, vi } from 'vitest'
import { closeTriesPool } from '#data/tries-pool'
import { changeOwnPassword, endOtherSessions, endOwnSession } from '#server/account-actions'
import { viewAccount } from '#server/account-views'
import { findLogin, makeLogin, openSession } from '#server/sign-in'
import { loginOfPassword } from '#server/sign-in/with-password'
import { askAsPerson, askWithCookie, cookies, redirectOf } from '../../support/next-request'

vi.mock('next/headers', () => import('../../support/next-request'))

const password = 'nine slow barges under rain'
const people = { own: '', other: '' }

async function made(email: string): Promise<string> {
  const login = await makeLogin({ email, name: 'Una Brook', password })
  if (!login.ok) throw new Error(JSON.stringify(login.reasons))
  return login.value.loginId
}

beforeAll(async () => {
  askAsPerson(null)
  people.own = await made('own.account@example.org')
  people.other = await made('other.account@example.org')
})
beforeEach(() => askAsPerson(null))
afterAll(closeTriesPool)

/** A browser that is signed in, by the cookie it keeps. */
async function browserOf(loginId: string): Promise<{ readonly cookie: string; readonly sessionId: string }> {
  askAsPerson(null)
  await openSession({ loginId, as: null })
  const cookie = (await cookies()).get('turnbook')?.value ?? ''
  return { cookie, sessionId: (await findLogin())?.sessionId ?? '' }
}

function use({ cookie }: { readonly cookie: string }): void {
  askAsPerson(null)
  askWithCookie('turnbook', cookie)
}

const formOf = (fields: Record<string, string>) => {
  const form = new FormData()
  for (const [name, value] of Object.entries(fields)) form.set(name, value)
  return form
}
const ledTo = (work: Promise<unknown>) => work.then(() => null, redirectOf)

it('shows the browsers of this sign-in alone, and ends one of them, never another’s', async () => {
  const [one, two, foreign] = [
    await browserOf(people.own),
    await browserOf(people.own),
    await browserOf(people.other),
  ]
  use(one)
  const { sessions } = await viewAccount()
  expect(sessions.filter(({ isThis }) => isThis).map(({ id }) => id)).toEqual([one.sessionId])
  expect(sessions.map(({ id }) => id)).toContain(two.sessionId)
  expect(sessions.map(({ id }) => id)).not.toContain(foreign.sessionId)
  expect(await ledTo(endOwnSession(formOf({ sessionId: foreign.sessionId })))).toBe('/account')
  expect(await ledTo(endOwnSession(formOf({ sessionId: two.sessionId })))).toBe('/account')
  use(two)
  expect(await findLogin()).toBeNull()
  use(foreign)
  expect(await findLogin()).toMatchObject({ loginId: people.other })
})

it('ends all browsers but this one', async () => {
  const [one, two] = [await browserOf(people.own), await browserOf(people.own)]
  use(one)
  expect(await ledTo(endOtherSessions())).toBe('/account')
  expect((await viewAccount()).sessions.map(({ id }) => id)).toEqual([one.sessionId])
  use(two)
  expect(await findLogin()).toBeNull()
})

it('takes a new password from who knows the old one only, and ends the other browsers', async () => {
  const [one, two] = [await browserOf(people.own), await browserOf(people.own)]
  use(one)
  const next = 'twelve copper lanterns adrift'
  const change = (oldPassword: string) =>
    changeOwnPassword({ status: 'idle' }, formOf({ oldPassword, password: next }))
  const refused = await change('not the old one at all')
  expect(refused).toMatchObject({ status: 'refused', problems: [{ path: 'oldPassword' }] })
  // What was typed as a password is never sent back.
  expect(JSON.stringify(refused)).not.toContain(next)
  expect(await change(password)).toMatchObject({ status: 'done' })
  expect(await findLogin()).not.toBeNull()
  use(two)
  expect(await findLogin()).toBeNull()
  expect((await loginOfPassword({ email: 'own.account@example.org', password: next })).ok).toBe(true)
})

it('leads who is signed out to the page to sign in, and changes nothing', async () => {
  expect(await ledTo(viewAccount())).toBe('/sign-in')
  expect(await ledTo(endOtherSessions())).toBe('/sign-in')
  const answer = await changeOwnPassword({ status: 'idle' }, formOf({ oldPassword: password, password }))
  expect(answer).toMatchObject({ status: 'refused' })
})
