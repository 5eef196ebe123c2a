import { createHash } from 'node:crypto'
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { listAudit } from '#data/audit'
import { getClub } from '#data/clubs'
import { appDatabase } from '#data/database'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { listPeopleOfLogin } from '#data/logins'
import { closeTriesPool } from '#data/tries-pool'
import { isSetUpOpen } from '#server/set-up'
import { setUp } from '#server/set-up-actions'
import { findLogin } from '#server/sign-in'
import { emptyDatabase } from '../support/empty-database'
import { formOfFields } from '../support/form-of-fields'
import { askAsPerson, redirectOf } from '../support/next-request'
import { aClub, ownerDatabase } from '../support/test-club'
import { idle } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const code = 'ABCD-EFGH-JKMN-PQRS-TVWX-YZ01-2345'
const asked = {
  code: ` ${code.toLowerCase()} `,
  clubName: '  Mill  Lane Rovers ',
  timeZone: 'Pacific/Auckland',
  name: 'Runa Hale',
  email: 'Runa.Hale@example.org',
  password: 'seven quiet herons over marl',
}
const send = (fields: Partial<typeof asked> = {}) => setUp(idle, formOfFields({ ...asked, ...fields }))
const logins = () => ownerDatabase().login.count()

/** Where it led, or what it answered. */
async function answerOf(sending: Promise<unknown>): Promise<unknown> {
  try {
    return await sending
  } catch (error) {
    const href = redirectOf(error)
    if (href) return href
    if (error instanceof Error && 'digest' in error) return String(error.digest)
    throw error
  }
}

beforeEach(() => {
  askAsPerson(null)
  process.env.TURNBOOK_SET_UP = createHash('sha256').update(code.replaceAll('-', '')).digest('hex')
})
afterEach(async () => {
  delete process.env.TURNBOOK_SET_UP
  await emptyDatabase()
})
afterAll(closeTriesPool)

describe('setting up', () => {
  it('makes the club and its administrator, signed in, with a row in the record', async () => {
    expect(await answerOf(send())).toBe('/club')
    const login = await findLogin()
    expect(login).toMatchObject({ email: 'runa.hale@example.org', name: 'Runa Hale' })
    const [person, ...others] = await listPeopleOfLogin(login?.loginId ?? '')
    expect(others).toEqual([])
    expect(person).toMatchObject({
      clubName: 'Mill Lane Rovers',
      isDemo: false,
      name: 'Runa Hale',
      role: 'administrator',
      personId: login?.personId,
    })
    const [club, audit] = await inClub(person?.clubId ?? '', async (tx) => [
      await getClub(tx),
      await listAudit(tx, { limit: 9 }),
    ])
    expect(club).toMatchObject({ timeZone: 'Pacific/Auckland', calendarDay: null })
    expect(audit).toMatchObject([{ action: 'foundClub', personName: 'Runa Hale' }])
  })

  it('is open once: afterwards, and where any club stands, nothing is there', async () => {
    await answerOf(send())
    expect(await isSetUpOpen()).toBe(false)
    expect(await answerOf(send({ email: 'other@example.org' }))).toMatch(/404/)
    expect(await logins()).toBe(1)
  })

  it('is not there where the start made no code, whatever is sent', async () => {
    delete process.env.TURNBOOK_SET_UP
    expect(await isSetUpOpen()).toBe(false)
    expect(await answerOf(send({ code: '' }))).toMatch(/404/)
  })

  it('is not there beside a demo', async () => {
    await aClub({ isDemo: true })
    expect(await answerOf(send())).toMatch(/404/)
    expect(await logins()).toBe(0)
  })

  it('says the same of every wrong code, makes nothing, and stops listening after too many', async () => {
    const wrong = ['', 'A', code.replace('A', 'B'), `${code}0`]
    const answers = []
    for (const one of wrong) answers.push(await send({ code: one }))
    expect(
      new Set(answers.map((answer) => JSON.stringify('problems' in answer && answer.problems))).size,
    ).toBe(1)
    expect(answers[0]).toMatchObject({ status: 'refused', problems: [{ path: 'code' }] })
    for (let count = 0; count < 17; count += 1) await send({ code: 'WRONG' })
    // A good code would be held back too: else it could be found by trying on.
    expect(await answerOf(send())).toMatchObject({
      problems: [{ path: 'code', message: expect.stringContaining('Wait') }],
    })
    expect(await logins()).toBe(0)
  })

  it.each([
    ['an empty name of the club', { clubName: ' ' }, 'clubName'],
    ['a time zone that is none', { timeZone: 'Moon/Crater' }, 'timeZone'],
    ['no name', { name: '' }, 'name'],
    ['an address that is none', { email: 'runa' }, 'email'],
    ['a password that is short', { password: 'short' }, 'password'],
    ['a password of the club’s name', { password: 'MillLaneRovers1' }, 'password'],
  ] as const)('refuses %s beside its field, and makes nothing', async (_, fields, path) => {
    const answer = await send(fields)
    expect(answer).toMatchObject({ status: 'refused', problems: [{ path }] })
    expect(JSON.stringify(answer)).not.toContain(asked.password)
    expect(await logins()).toBe(0)
    expect(await isSetUpOpen()).toBe(true)
  })

  it('has one winner of two at once, and leaves no sign-in of the other', async () => {
    const answers = await Promise.all([
      answerOf(send()),
      answerOf(send({ email: 'second@example.org', clubName: 'Second' })),
    ])
    expect(answers.filter((answer) => answer === '/club')).toHaveLength(1)
    expect(answers.filter((answer) => /404/.test(String(answer)))).toHaveLength(1)
    expect(await ownerDatabase().club.count()).toBe(1)
    expect(await logins()).toBe(1)
  })

  it('takes an address again whose founding was cut off half way', async () => {
    await appDatabase().login.create({
      data: { id: newId(), email: 'runa.hale@example.org', name: 'Runa Hale' },
    })
    expect(await answerOf(send())).toBe('/club')
    expect(await logins()).toBe(1)
  })
})
