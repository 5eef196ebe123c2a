import { afterEach, expect, it, vi } from 'vitest'
import { claimAdult } from '#data/adults'
import { listDemoPeople } from '#data/people'
import { findLogin, makeLogin } from '#server/sign-in'
import { changeAddressOf } from '#server/sign-in/change-address'
import { findSignedIn } from '#server/viewer'
import { askAsPerson } from '../support/next-request'
import { aClub } from '../support/test-club'

vi.mock('next/headers', () => import('../support/next-request'))

const before = process.env.TURNBOOK_DEMO
afterEach(() => {
  if (before === undefined) delete process.env.TURNBOOK_DEMO
  else process.env.TURNBOOK_DEMO = before
})

it('a sign-in from the demo holds no longer once the demo is turned off', async () => {
  const at = await aClub({ isDemo: true })
  askAsPerson({ clubId: at.club.id, personId: at.headCoachId })
  process.env.TURNBOOK_DEMO = '1'
  expect(await findSignedIn()).toMatchObject({ role: 'headCoach' })
  process.env.TURNBOOK_DEMO = '0'
  expect(await findSignedIn()).toBeNull()
})

it('a demo offers nobody who has come in with a sign-in of their own, and its shared sign-ins keep their address', async () => {
  const at = await aClub({ isDemo: true })
  const offered = async () => (await listDemoPeople()).map(({ id }) => id)
  expect(await offered()).toEqual(expect.arrayContaining([at.headCoachId, at.guardianId]))
  askAsPerson({ clubId: at.club.id, personId: at.headCoachId })
  const login = await findLogin()
  expect(
    login && (await changeAddressOf(login, { email: 'mine@example.org', now: new Date() })),
  ).toMatchObject({
    ok: false,
  })
  const own = await makeLogin({
    ...{ email: 'mo@example.org', name: 'Mo Fenn', password: 'seven quiet herons over marl' },
  })
  const loginId = own.ok ? own.value.loginId : ''
  await at.run((tx) => claimAdult(tx, { personId: at.guardianId, loginId }))
  expect(await offered()).toContain(at.headCoachId)
  expect(await offered()).not.toContain(at.guardianId)
})
