import { describe, expect, it } from 'vitest'
import { mayGiveRole } from '#access/giving-roles'
import { type AdultStanding, isLastAdministrator } from '#access/last-administrator'
import { viewerRoles } from '#access/viewer'

describe('giving roles', () => {
  it('is for administrators alone, who may give every one', () => {
    for (const giver of viewerRoles)
      for (const role of viewerRoles)
        expect(mayGiveRole(giver, role), `${giver} gives ${role}`).toBe(giver === 'administrator')
  })
})

const anAdult = (adult: Partial<AdultStanding> & { id: string }): AdultStanding => ({
  role: 'administrator',
  hasAccess: true,
  canSignIn: true,
  ...adult,
})

describe('the last administrator', () => {
  const first = anAdult({ id: 'first' })

  it('is the only one there is', () => {
    expect(isLastAdministrator([first, anAdult({ id: 'coach', role: 'headCoach' })], 'first')).toBe(true)
  })

  it.each([
    ['has a sign-in', {}, false],
    ['has never signed in', { canSignIn: false }, true],
    ['has no access any more', { hasAccess: false }, true],
    ['is no administrator', { role: 'headCoach' as const }, true],
  ])('beside another who %s', (_, other, expected) => {
    expect(isLastAdministrator([first, anAdult({ id: 'other', ...other })], 'first')).toBe(expected)
  })

  it('is nobody who is none now: taking away what is not there leaves the club as it was', () => {
    const ended = anAdult({ id: 'ended', hasAccess: false })
    expect(isLastAdministrator([first, ended], 'ended')).toBe(false)
    expect(isLastAdministrator([first], 'nobody')).toBe(false)
  })

  it('who has never signed in may be replaced by another such', () => {
    const invited = [anAdult({ id: 'a', canSignIn: false }), anAdult({ id: 'b', canSignIn: false })]
    expect(isLastAdministrator(invited, 'a')).toBe(false)
  })
})
