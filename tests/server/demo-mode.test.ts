import { afterEach, expect, it, vi } from 'vitest'
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
