import { describe, expect, it } from 'vitest'
import { isSessionGood, isSignInFresh, sessionLimits } from '#access/session-limits'
import { type ViewerRole, viewerRoles } from '#access/viewer'

const signedInAt = new Date('2026-09-01T18:00:00Z')
const on = (seconds: number) => new Date(signedInAt.getTime() + seconds * 1000)

describe('how long a sign-in holds', () => {
  it.each(viewerRoles)('%s: as long as it is used, and no longer than in all', (role) => {
    const { idleSeconds, absoluteSeconds } = sessionLimits[role]
    expect(idleSeconds).toBeLessThan(absoluteSeconds)
    const at = (usedAt: Date, now: Date) => isSessionGood({ signedInAt, usedAt }, { roles: [role], now })
    expect(at(signedInAt, on(idleSeconds - 1))).toBe(true)
    expect(at(signedInAt, on(idleSeconds))).toBe(false)
    expect(at(on(absoluteSeconds - 2), on(absoluteSeconds - 1))).toBe(true)
    expect(at(on(absoluteSeconds - 1), on(absoluteSeconds))).toBe(false)
  })

  it('is shortest for who reaches most', () => {
    for (const role of viewerRoles)
      expect(sessionLimits[role].absoluteSeconds).toBeGreaterThanOrEqual(
        sessionLimits.administrator.absoluteSeconds,
      )
  })

  it('holds as long as the strictest role it is known in, and no longer for who is known in none', () => {
    const at = (roles: readonly ViewerRole[]) =>
      isSessionGood({ signedInAt, usedAt: signedInAt }, { roles, now: on(3 * 3600) })
    expect([at(['coach']), at(['coach', 'administrator']), at(['guardian', 'coach']), at([])]).toEqual([
      ...[true, false, true, false],
    ])
  })

  it('ends by no clock that was put back', () => {
    expect(isSessionGood({ signedInAt, usedAt: signedInAt }, { roles: ['coach'], now: on(-3600) })).toBe(true)
    expect(isSignInFresh(signedInAt, on(14 * 60))).toBe(true)
    expect(isSignInFresh(signedInAt, on(15 * 60))).toBe(false)
  })
})
