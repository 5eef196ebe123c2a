import fc from 'fast-check'
import { afterAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { appDatabase } from '#data/database'
import { recordGuardianships } from '#data/guardianships'
import { newId } from '#data/ids'
import { recordPeople } from '#data/people'
import { closeTriesPool } from '#data/tries-pool'
import { askAboutChild } from '#server/ask-actions'
import { eraseChild, recordConsent, withdrawConsent } from '#server/child-actions'
import { changeClub, countGoals, saveSeason, saveSquad } from '#server/club-actions'
import { chooseFormat, saveFormat } from '#server/format-actions'
import { answerRequest, changeClubRights, extendRequest, writeDownRequest } from '#server/request-actions'
import {
  askForNewPassword,
  askForSignInLink,
  setNewPassword,
  signInWithLink,
  signInWithPassword,
  verifyOwnAddress,
} from '#server/sign-in-actions'
import { askAsPerson } from '../support/next-request'
import { spoilForm, spoilings } from '../support/spoil-form'
import { accepted, type Door, isRefused, sent, whatStands } from '../support/spoiled-door'
import { typedFormat } from '../support/typed-format'
import { aClubForWriting, idle } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()
beforeEach(() => appDatabase().rateLimit.deleteMany())
afterAll(closeTriesPool)
let administratorId = ''
let guardianId = ''

beforeEach(async () => {
  administratorId = newId()
  guardianId = newId()
  await at.club.run(async (tx) => {
    await recordPeople(tx, [
      { id: administratorId, name: 'Wyn Ferrier', role: 'administrator' },
      { id: guardianId, name: 'Ila Ridge', role: 'guardian' },
    ])
    await recordGuardianships(tx, [{ personId: guardianId, playerId: child(), claimedAt: new Date() }])
  })
})

const child = () => at.club.playerIds[0] ?? ''
const day = '2026-09-15'

type Asker = 'administrator' | 'guardian' | 'nobody'

/** Doors of the club's own pages and of families, with a form that each takes, or refuses with reason. */
const doors: readonly (readonly [string, Door, Asker, () => object])[] = [
  ['changeClub', changeClub, 'administrator', () => ({ name: 'Marl Lane', timeZone: 'Europe/London' })],
  ['countGoals', countGoals, 'administrator', () => ({ countsGoals: 'yes' })],
  [
    'saveSeason',
    saveSeason,
    'administrator',
    () => ({
      ...{ seasonId: '', name: 'Next', firstDay: '2027-08-01', lastDay: '2028-06-30' },
      ...{ 'termName-0': 'Autumn', 'termFirstDay-0': '2027-08-01', 'termLastDay-0': '2027-12-31' },
    }),
  ],
  [
    'saveFormat',
    saveFormat,
    'administrator',
    () => ({ ...typedFormat, name: newId(), formatId: '', version: '' }),
  ],
  ['chooseFormat', chooseFormat, 'administrator', () => ({ squadId: at.club.squadId, formatId: '' })],
  ['saveSquad', saveSquad, 'administrator', () => ({ squadId: '', name: 'Stoats', ageLimit: '11' })],
  [
    'writeDownRequest',
    writeDownRequest,
    'administrator',
    () => ({ playerId: child(), kind: 'copy', text: '', askedById: guardianId, receivedOn: day }),
  ],
  [
    'extendRequest',
    extendRequest,
    'administrator',
    () => ({ requestId: newId(), to: '2026-12-01', why: 'Many.' }),
  ],
  [
    'answerRequest',
    answerRequest,
    'administrator',
    () => ({ requestId: newId(), outcome: 'done', answer: 'Here.' }),
  ],
  [
    'changeClubRights',
    changeClubRights,
    'administrator',
    () => ({ retentionMonths: '24', askWhom: 'Wyn, by the clubhouse', holidays: '2026-12-25' }),
  ],
  ['eraseChild', eraseChild, 'administrator', () => ({ playerId: child(), name: 'Ada Fenn' })],
  [
    'recordConsent',
    recordConsent,
    'administrator',
    () => ({ playerId: child(), kind: 'book', wording: 'Yes.', givenById: guardianId, givenOn: day }),
  ],
  [
    'withdrawConsent',
    withdrawConsent,
    'administrator',
    () => ({ playerId: child(), consentId: newId(), on: day }),
  ],
  [
    'askAboutChild',
    askAboutChild,
    'guardian',
    () => ({ playerId: child(), kind: 'question', text: 'Who sees it?' }),
  ],
  [
    'signInWithPassword',
    signInWithPassword,
    'nobody',
    () => ({ email: 'a@example.org', password: 'x'.repeat(15) }),
  ],
  ['askForSignInLink', askForSignInLink, 'nobody', () => ({ email: 'a@example.org' })],
  ['askForNewPassword', askForNewPassword, 'nobody', () => ({ email: 'a@example.org' })],
  ['signInWithLink', signInWithLink, 'nobody', () => ({ code: 'none' })],
  ['setNewPassword', setNewPassword, 'nobody', () => ({ code: 'none', password: 'x'.repeat(15) })],
  ['verifyOwnAddress', verifyOwnAddress, 'nobody', () => ({ code: 'none' })],
]

/** What they name is not there, or needs a proof that nobody has. */
const neverTaken: readonly Door[] = [
  ...[extendRequest, answerRequest, withdrawConsent, recordConsent, eraseChild],
  ...[signInWithPassword, signInWithLink, setNewPassword, verifyOwnAddress],
]

function askAs(asker: Asker): void {
  const personId = { administrator: administratorId, guardian: guardianId, nobody: null }[asker]
  askAsPerson(personId ? { clubId: at.club.club.id, personId } : null)
}

describe('whatever is sent to a door of the club, of families, or of sign-ins', () => {
  it.each(doors)(
    '%s takes all of it or refuses it in words, and what is refused leaves no trace',
    async (_name, door, asker, valid) => {
      askAs(asker)
      const own = await door(idle, sent(valid(), 'json')).catch(accepted)
      expect([isRefused(own), own]).toEqual([neverTaken.includes(door), own])
      const way = fc.constantFrom('json' as const, 'fields' as const)
      await fc.assert(
        fc.asyncProperty(spoilings, way, async (places, way) => {
          askAs(asker)
          const form = sent(spoilForm(valid(), places), way)
          const stood = await whatStands(at.club.club.id)
          const answer = await door(idle, form).catch(accepted)
          expect(JSON.stringify(answer)).not.toMatch(/Something went wrong/)
          if (isRefused(answer) && asker !== 'nobody') expect(await whatStands(at.club.club.id)).toBe(stood)
        }),
        { numRuns: 6 },
      )
    },
    30_000,
  )

  it.each([...[undefined, null, 'form', 3, [], {}, new Map()]])(
    '%s is no form, and each says so',
    async (form) => {
      for (const [, door, asker] of doors) {
        askAs(asker)
        const answer = await door(idle, form as unknown as FormData).catch(accepted)
        expect(answer === '/' || isRefused(answer)).toBe(true)
      }
    },
  )
})
