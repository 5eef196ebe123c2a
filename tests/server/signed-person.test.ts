import { beforeAll, describe, expect, it } from 'vitest'
import { sign } from '#server/sign'
import { personOfSigned, signedPerson } from '#server/signed-person'

beforeAll(() => {
  process.env.TURNBOOK_SECRET ??= 'a secret of the tests, long enough to be one'
})

const person = { clubId: 'club', personId: 'person' }
const now = new Date('2026-11-25T12:00:00Z')
const daysOn = (days: number) => new Date(now.getTime() + days * 24 * 60 * 60 * 1000)

describe('a person signed in', () => {
  it.each([0, 29, -0.5])('is the same after %d days', (days) => {
    expect(personOfSigned(signedPerson(person, now), daysOn(days))).toEqual(person)
  })

  it.each([30, 31, 10_000, -2])('is nobody any more after %d days', (days) => {
    expect(personOfSigned(signedPerson(person, now), daysOn(days))).toBeNull()
  })

  it.each([
    'club/person',
    `club/person/${now.getTime()}/more`,
    'club/person/',
    'club/person/NaN',
    'club/person/Infinity',
    '',
  ])('is nobody by another text, signed though it be: %s', (text) => {
    expect(personOfSigned(sign(text), now)).toBeNull()
  })

  it('is nobody without the signature', () => {
    expect(personOfSigned(`club/person/${now.getTime()}.x`, now)).toBeNull()
  })
})
