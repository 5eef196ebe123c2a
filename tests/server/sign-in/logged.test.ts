import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { closeTriesPool } from '#data/tries-pool'
import { takeTry } from '#server/rate-limit'
import { endSessionsOf, leaveSession, makeLogin, openSession } from '#server/sign-in'
import { loginOfPassword, setPassword } from '#server/sign-in/with-password'
import { askAsPerson } from '../../support/next-request'
import '../../support/test-club'

vi.mock('next/headers', () => import('../../support/next-request'))

const email = 'ivo.lock@example.org'
const password = 'nine slow barges under fog'
const wrong = 'nine quick barges under fog'

let lines: string[] = []
beforeEach(() => {
  lines = []
  vi.spyOn(process.stderr, 'write').mockImplementation((line) => {
    lines.push(String(line))
    return true
  })
})
afterEach(() => vi.restoreAllMocks())
afterAll(closeTriesPool)

describe('the log of sign-ins', () => {
  it('has each that was made, refused and ended, by ids, and nothing that was typed', async () => {
    askAsPerson(null)
    const made = await makeLogin({ email, name: 'Ivo Lock', password })
    if (!made.ok) throw new Error('not made')
    const { loginId } = made.value
    await loginOfPassword({ email, password: wrong })
    await loginOfPassword({ email: 'nobody@example.org', password: wrong })
    await openSession({ loginId, as: null })
    await leaveSession()
    await setPassword({ loginId, password: `${password} again` })
    await endSessionsOf({ loginId })
    for (let count = 0; count < 6; count += 1) await takeTry({ what: 'mailToAddress', key: email })
    const told = lines.map((line) => JSON.parse(line))
    expect(told.map(({ event, loginId: id, what }) => [event, id ?? what ?? null])).toEqual([
      ['password refused', loginId],
      ['password refused', null],
      ['signed in', loginId],
      ['signed out', loginId],
      ['password set', loginId],
      ['signed out everywhere', loginId],
      ['tried too often', 'mailToAddress'],
    ])
    expect(lines.join('')).not.toMatch(/barges|ivo|Lock|nobody|example\.org/)
    for (const { at } of told) expect(at).toMatch(/^\d{4}-\d\d-\d\dT[\d:.]+Z$/)
  })
})
