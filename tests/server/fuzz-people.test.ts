import fc from 'fast-check'
import { beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { recordGuardianships } from '#data/guardianships'
import { newId } from '#data/ids'
import { makeOwnCalendar, takeBackOwnCalendar } from '#server/calendar-actions'
import { makeFamilyLink, makePersonLink, revokeFamilyLink, revokePersonLink } from '#server/link-actions'
import { textOfCode } from '#server/link-code'
import {
  addPerson,
  addSquadLine,
  changePerson,
  endAccess,
  endLineOfSquad,
  giveAccessBack,
  recordGuardian,
  removeGuardian,
  withholdComing,
} from '#server/people-actions'
import { chooseNewPassword, signInOnTheWay, takeAsSignedIn, takeWithNewSignIn } from '#server/welcome-actions'
import { aLinkingClub, codeIn, type LinkingClub } from '../support/linking-club'
import { askAsPerson, askWithCookie, redirectOf } from '../support/next-request'
import { spoilForm, spoilings } from '../support/spoil-form'
import { ownerDatabase } from '../support/test-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const idle = { status: 'idle' } as const
type Door = (previous: typeof idle, form: FormData) => Promise<unknown>

let at: LinkingClub
beforeAll(async () => {
  at = await aLinkingClub()
  await at.run((tx) => recordGuardianships(tx, [{ personId: at.guardianId, playerId: at.childId }]))
})
beforeEach(() => askAsPerson({ clubId: at.club.id, personId: at.administratorId }))

const ofGuardian = () => ({ personId: at.guardianId, playerId: at.childId })
const signIn = { email: 'rosa@example.org', password: 'seven quiet herons wade home' }
const day = '2026-09-15'

const doors: readonly (readonly [string, Door, () => object])[] = [
  ['addPerson', addPerson, () => ({ name: 'Ivo Weld', role: 'coach', email: 'ivo@example.org' })],
  ['changePerson', changePerson, () => ({ personId: at.guardianId, name: 'Mo Fenn', role: 'guardian' })],
  ['endAccess', endAccess, () => ({ personId: at.otherGuardianId })],
  ['giveAccessBack', giveAccessBack, () => ({ personId: at.otherGuardianId })],
  [
    'addSquadLine',
    addSquadLine,
    () => ({ personId: at.headCoachId, squadId: at.squadId, kind: 'cover', firstDay: day, lastDay: '' }),
  ],
  ['endLineOfSquad', endLineOfSquad, () => ({ personId: at.headCoachId, lineId: newId(), lastDay: day })],
  ['recordGuardian', recordGuardian, () => ({ ...ofGuardian(), personId: at.headCoachId })],
  ['removeGuardian', removeGuardian, () => ({ ...ofGuardian(), personId: at.headCoachId })],
  ['withholdComing', withholdComing, () => ({ ...ofGuardian(), withholdsComing: 'on' })],
  ['makePersonLink', makePersonLink, () => ({ personId: at.coach.personId, kind: 'join', how: 'show' })],
  ['makeFamilyLink', makeFamilyLink, () => ({ ...ofGuardian(), how: 'show' })],
  ['revokePersonLink', revokePersonLink, () => ({ personId: at.coach.personId, linkId: newId() })],
  ['revokeFamilyLink', revokeFamilyLink, () => ({ playerId: at.childId, linkId: newId() })],
  ['makeOwnCalendar', makeOwnCalendar, () => ({ [`squad-${at.squadId}`]: 'on' })],
  ['takeBackOwnCalendar', takeBackOwnCalendar, () => ({})],
  ['takeAsSignedIn', takeAsSignedIn, () => ({})],
  ['signInOnTheWay', signInOnTheWay, () => signIn],
  ['chooseNewPassword', chooseNewPassword, () => ({ password: signIn.password })],
]

/** All that stands of adults and links, without when a session was last used. */
async function whatStands(): Promise<string> {
  const { person, guardianship, oneTimeLink, calendarFeed, squadCoach, auditEntry, login } = ownerDatabase()
  const rows = await Promise.all([
    person.findMany({ orderBy: { id: 'asc' } }),
    guardianship.findMany({ orderBy: [{ personId: 'asc' }, { playerId: 'asc' }] }),
    oneTimeLink.findMany({ orderBy: { id: 'asc' } }),
    calendarFeed.findMany({ orderBy: { id: 'asc' } }),
    squadCoach.findMany({ orderBy: { id: 'asc' } }),
    auditEntry.findMany({ orderBy: { id: 'asc' } }),
    login.findMany({ orderBy: { id: 'asc' } }),
  ])
  return JSON.stringify(rows)
}

function sent(input: object, way: 'json' | 'fields'): FormData {
  const form = new FormData()
  if (way === 'json') form.set('json', JSON.stringify(input))
  else
    for (const [name, value] of Object.entries(input))
      form.append(name, typeof value === 'string' ? value : (JSON.stringify(value) ?? ''))
  return form
}

const reached = (error: unknown) => redirectOf(error) ?? Promise.reject(error)
const isRefused = (answer: unknown) => (answer as { status?: string } | null)?.status === 'refused'

async function holds(door: Door, valid: object, runs: number): Promise<void> {
  const way = fc.constantFrom('json' as const, 'fields' as const)
  await fc.assert(
    fc.asyncProperty(spoilings, way, async (places, how) => {
      const form = sent(spoilForm(valid, places), how)
      const stood = await whatStands()
      const answer = await door(idle, form).catch(reached)
      expect(JSON.stringify(answer)).not.toMatch(/Something went wrong/)
      if (isRefused(answer)) expect(await whatStands()).toBe(stood)
    }),
    { numRuns: runs },
  )
}

describe('whatever is sent to a door of adults and links', () => {
  it.each(doors)('%s takes all of it or refuses it in words, without a trace', async (_name, door, valid) => {
    // Who asks gets its sign-in before anything is compared.
    await revokeFamilyLink(idle, new FormData())
    await holds(door, valid(), 12)
  })

  it('takeWithNewSignIn makes a sign-in with what it gives, or neither', async () => {
    askAsPerson(null)
    const administrator = await at.viewerOf(at.administratorId)
    askAsPerson({ clubId: at.club.id, personId: administrator.personId })
    const made = await makeFamilyLink(idle, sent({ ...ofGuardian(), how: 'show' }, 'json'))
    askAsPerson(null)
    askWithCookie('turnbook-welcome', textOfCode(codeIn({ value: made })))
    await holds(takeWithNewSignIn, signIn, 6)
  })

  it.each([undefined, null, 'form', 3, [], {}])('%s is no form, and every door says so', async (form) => {
    for (const [name, door] of doors)
      expect(await door(idle, form as unknown as FormData).catch(reached), name).toMatchObject({
        status: 'refused',
      })
  })
})
