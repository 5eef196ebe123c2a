import { beforeEach, describe, expect, it, vi } from 'vitest'
import type { Viewer } from '#access/viewer'
import { listAudit } from '#data/audit'
import { listRequests } from '#data/child-requests'
import { getClubRights } from '#data/club-rights'
import { listConsentsOf } from '#data/consents'
import { recordGuardianships } from '#data/guardianships'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { recordPeople } from '#data/people'
import { getPlayer } from '#data/players'
import { loadAskPage } from '#server/ask-about-child'
import { askAboutChild } from '#server/ask-actions'
import { eraseChild, recordConsent, withdrawConsent } from '#server/child-actions'
import { loadChildFile, loadChildPage } from '#server/child-views'
import { findViewer } from '#server/find-viewer'
import { forgetChildrenWhenDue } from '#server/forget-children'
import { answerRequest, changeClubRights, extendRequest, writeDownRequest } from '#server/request-actions'
import { loadRequest, loadRequests } from '#server/request-views'
import { formOfFields as form } from '../support/form-of-fields'
import { askAsPerson } from '../support/next-request'
import { aClub } from '../support/test-club'
import { aClubForWriting, idle, otherCoachId } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()
let adminId: string
let secondId: string
const today = '2026-10-01'

beforeEach(async () => {
  adminId = newId()
  secondId = newId()
  await at.club.run(async (tx) => {
    await recordPeople(tx, [
      { id: adminId, name: 'Una Grove', role: 'administrator' },
      { id: secondId, name: 'Pip Fenn', role: 'guardian' },
    ])
    const claimed = { playerId: child(), claimedAt: new Date('2026-09-01T12:00:00Z') }
    await recordGuardianships(tx, [
      { ...claimed, personId: at.club.guardianId },
      { ...claimed, personId: secondId },
    ])
  })
})

type Who = 'administrator' | 'headCoach' | 'coach' | 'otherCoach' | 'guardian' | 'second'
const child = () => at.club.playerIds[0] as string
const idOf = (who: Who) =>
  ({
    administrator: adminId,
    headCoach: at.club.headCoachId,
    coach: at.club.coach.personId,
    otherCoach: otherCoachId,
    guardian: at.club.guardianId,
    second: secondId,
  })[who]
const as = (who: Who) => askAsPerson({ clubId: at.club.club.id, personId: idOf(who) })
const viewer = async (who: Who) =>
  (await findViewer({ clubId: at.club.club.id, personId: idOf(who) })) as Viewer
const requests = () => at.club.run(listRequests)
const deeds = async () =>
  (await at.club.run((tx) => listAudit(tx, { limit: 20 }))).map(({ action }) => action)

const ask = (fields: object = {}) =>
  askAboutChild(idle, form({ playerId: child(), kind: 'question', text: 'What is kept?', ...fields }))
const asked = async (fields: object = {}) => {
  as('guardian')
  expect(await ask(fields)).toMatchObject({ status: 'done' })
  as('administrator')
  return ((await requests())[0] as { id: string }).id
}

describe('the doors of a family’s rights', () => {
  it.each(['headCoach', 'coach', 'otherCoach', 'guardian'] as const)(
    'of the administrator are closed to %s, and nothing changes',
    async (who) => {
      const requestId = await asked()
      const before = await requests()
      as(who)
      const ofChild = { playerId: child() }
      const doors = [
        () =>
          writeDownRequest(
            idle,
            form({ ...ofChild, kind: 'copy', text: '', askedById: '', receivedOn: today }),
          ),
        () => extendRequest(idle, form({ requestId, to: '2026-12-01', why: 'w' })),
        () => answerRequest(idle, form({ requestId, outcome: 'done', answer: 'a' })),
        () => changeClubRights(idle, form({ retentionMonths: '12', askWhom: '', holidays: '' })),
        () =>
          recordConsent(
            idle,
            form({ ...ofChild, kind: 'messages', wording: 'w', givenById: secondId, givenOn: today }),
          ),
        () => withdrawConsent(idle, form({ ...ofChild, consentId: newId(), on: today })),
        () => eraseChild(idle, form({ ...ofChild, name: 'Ada Fenn' })),
      ]
      for (const open of doors)
        expect(await open()).toMatchObject({
          status: 'refused',
          problems: [{ message: expect.stringContaining('not yours to change') }],
        })
      const one = await viewer(who)
      for (const look of [
        loadRequests(one),
        loadRequest(one, { requestId }),
        loadChildPage(one, { playerId: child() }),
        loadChildFile(one, { playerId: child(), forId: null }),
      ])
        await expect(look).rejects.toMatchObject({ code: 'notAllowed' })
      expect(await requests()).toEqual(before)
      expect((await at.club.run((tx) => getPlayer(tx, child()))).name).toBe('Ada Fenn')
      expect((await at.club.run(getClubRights)).retentionMonths).toBeNull()
    },
  )

  it.each(['administrator', 'headCoach', 'coach', 'otherCoach'] as const)(
    'of a guardian is closed to %s',
    async (who) => {
      as(who)
      expect(await ask()).toMatchObject({ status: 'refused' })
      expect(await requests()).toEqual([])
      await expect(loadAskPage(await viewer(who), { playerId: child() })).rejects.toMatchObject({
        code: 'notAllowed',
      })
    },
  )

  it('lead nowhere in another club', async () => {
    const requestId = await asked()
    const other = await aClub()
    const stranger: Viewer = { ...(await viewer('administrator')), clubId: other.club.id }
    await expect(loadRequest(stranger, { requestId })).rejects.toMatchObject({ code: 'notFound' })
    await expect(loadChildPage(stranger, { playerId: child() })).rejects.toMatchObject({ code: 'notFound' })
    await expect(loadChildFile(stranger, { playerId: child(), forId: null })).rejects.toMatchObject({
      code: 'notFound',
    })
  })
})

describe('what a guardian asks', () => {
  it('is to be answered within a month, is read by its asker and the administrator, and by no other guardian', async () => {
    const requestId = await asked()
    // 1 October 2026 + 1 month is a Sunday: Monday 2 November.
    expect(await requests()).toMatchObject([
      { id: requestId, receivedOn: today, dueOn: '2026-11-02', askedByName: 'Mo Fenn' },
    ])
    const own = await loadAskPage(await viewer('guardian'), { playerId: child() })
    expect(own.requests.map(({ id }) => id)).toEqual([requestId])
    const others = await loadAskPage(await viewer('second'), { playerId: child() })
    expect(others.requests).toEqual([])
    // The database itself shows it to nobody else, whatever is asked.
    const seen = await inClub(at.club.club.id, listRequests, { guardianId: secondId })
    expect(seen).toEqual([])
    expect(await deeds()).toContain('askAboutChild')
  })

  it('about somebody else’s child goes nowhere', async () => {
    as('guardian')
    expect(await ask({ playerId: at.club.playerIds[1] })).toMatchObject({ status: 'refused' })
    expect(await requests()).toEqual([])
  })

  it('comes a handful of times a day, and not twice in the same words', async () => {
    as('guardian')
    for (const number of [1, 2, 3, 4, 5])
      expect(await ask({ text: `Question ${number}` })).toMatchObject({ status: 'done' })
    expect(await ask({ text: 'Question 6' })).toMatchObject({
      status: 'refused',
      problems: [{ message: expect.stringContaining('5 today already') }],
    })
    as('second')
    expect(await ask({ text: 'Question 1' })).toMatchObject({ status: 'done' })
    expect(await ask({ text: 'Question 1' })).toMatchObject({
      status: 'refused',
      problems: [{ message: expect.stringContaining('the same already') }],
    })
    expect(await requests()).toHaveLength(6)
  })

  it.each([
    ['nothing said', { text: ' ' }, 'text'],
    ['too much said', { text: 'x'.repeat(2001) }, 'text'],
    ['nothing chosen', { kind: '' }, 'kind'],
  ])('is refused with %s, and what was typed is kept', async (_what, fields, path) => {
    as('guardian')
    const reply = await ask(fields)
    expect(reply).toMatchObject({ status: 'refused', problems: [{ path }], typed: { playerId: child() } })
    expect(await requests()).toEqual([])
  })
})

describe('the administrator', () => {
  it('answers once, in words that the guardian reads', async () => {
    const requestId = await asked()
    const answer = () => answerRequest(idle, form({ requestId, outcome: 'done', answer: 'Turns and times.' }))
    expect(await answer()).toMatchObject({ status: 'done' })
    expect(await answer()).toMatchObject({ status: 'refused' })
    const { requests: own } = await loadAskPage(await viewer('guardian'), { playerId: child() })
    expect(own).toMatchObject([{ outcome: 'done', answer: 'Turns and times.' }])
    expect(await deeds()).toContain('answerRequest')
  })

  it('takes more time once, for two months more at most, and with a reason', async () => {
    const requestId = await asked()
    const extend = (to: string, why = 'Three seasons on paper.') =>
      extendRequest(idle, form({ requestId, to, why }))
    expect(await extend('2026-12-31', '')).toMatchObject({ status: 'refused', problems: [{ path: 'why' }] })
    expect(await extend('2026-11-02')).toMatchObject({ status: 'refused', problems: [{ path: 'to' }] })
    // 1 January 2027 is a Friday, and no holiday that this club has written down.
    expect(await extend('2027-01-02')).toMatchObject({ status: 'refused', problems: [{ path: 'to' }] })
    expect(await extend('2027-01-01')).toMatchObject({ status: 'done' })
    expect(await extend('2026-12-31')).toMatchObject({ status: 'refused' })
    expect(await requests()).toMatchObject([
      { extendedTo: '2027-01-01', extendedWhy: 'Three seasons on paper.' },
    ])
  })

  it('writes one down that came by word of mouth, from the day on which it came', async () => {
    as('administrator')
    const write = (fields: object) =>
      writeDownRequest(
        idle,
        form({
          playerId: child(),
          kind: 'copy',
          text: '',
          askedById: '',
          receivedOn: '2026-08-31',
          ...fields,
        }),
      )
    expect(await write({ receivedOn: '2026-10-02' })).toMatchObject({
      status: 'refused',
      problems: [{ path: 'receivedOn' }],
    })
    expect(await write({ askedById: otherCoachId })).toMatchObject({
      status: 'refused',
      problems: [{ path: 'askedById' }],
    })
    expect(await write({})).toMatchObject({ status: 'done' })
    // 31 August + 1 month: September has 30 days, and the 30th is a Wednesday.
    expect(await requests()).toMatchObject([{ dueOn: '2026-09-30', askedById: null }])
  })

  it('writes down what one guardian agreed to; the other does not read it; it is taken back once', async () => {
    as('administrator')
    const given = {
      playerId: child(),
      kind: 'messages',
      wording: 'You may write to me.',
      givenOn: '2026-09-20',
    }
    const record = (fields: object = {}) =>
      recordConsent(idle, form({ ...given, givenById: idOf('guardian'), ...fields }))
    expect(await record()).toMatchObject({ status: 'done' })
    expect(await record()).toMatchObject({ status: 'refused', problems: [{ path: 'kind' }] })
    expect(await record({ givenById: otherCoachId })).toMatchObject({
      status: 'refused',
      problems: [{ path: 'givenById' }],
    })
    expect(await record({ givenOn: '2026-10-02' })).toMatchObject({
      status: 'refused',
      problems: [{ path: 'givenOn' }],
    })
    const [consent] = await at.club.run((tx) => listConsentsOf(tx, child()))
    expect((await loadAskPage(await viewer('guardian'), { playerId: child() })).consents).toHaveLength(1)
    expect((await loadAskPage(await viewer('second'), { playerId: child() })).consents).toEqual([])
    const seen = await inClub(at.club.club.id, (tx) => listConsentsOf(tx, child()), { guardianId: secondId })
    expect(seen).toEqual([])
    const withdraw = (on: string) =>
      withdrawConsent(idle, form({ playerId: child(), consentId: consent?.id ?? '', on }))
    expect(await withdraw('2026-09-19')).toMatchObject({ status: 'refused' })
    expect(await withdraw(today)).toMatchObject({ status: 'done' })
    expect(await withdraw(today)).toMatchObject({ status: 'refused' })
    expect(await deeds()).toEqual(expect.arrayContaining(['recordConsent', 'withdrawConsent']))
  })

  it('is seen to have looked at a child and to have taken a copy', async () => {
    const admin = await viewer('administrator')
    const { copy } = await loadChildPage(admin, { playerId: child() })
    expect(copy.child.name).toBe('Ada Fenn')
    const file = await loadChildFile(admin, { playerId: child(), forId: secondId })
    expect(JSON.parse(file.text)).toMatchObject({
      format: 'turnbook/child@1',
      guardians: [{ name: 'Pip Fenn' }],
    })
    await expect(loadChildFile(admin, { playerId: child(), forId: otherCoachId })).rejects.toMatchObject({
      code: 'notFound',
    })
    expect(await deeds()).toEqual(expect.arrayContaining(['look', 'copyChild']))
  })

  it('cannot say that a child is erased while its name stands', async () => {
    const requestId = await asked({ kind: 'erasure', text: '' })
    const done = await answerRequest(idle, form({ requestId, outcome: 'done', answer: 'It is gone.' }))
    expect(done).toMatchObject({ status: 'refused', problems: [{ path: 'outcome' }] })
    expect(await eraseChild(idle, form({ playerId: child(), name: 'Ada Fenn' }))).toMatchObject({
      status: 'done',
    })
    expect(await requests()).toMatchObject([
      { outcome: 'done', playerName: 'Former player 1', askedByName: null },
    ])
  })
})

describe('how long names are kept', () => {
  const set = (fields: object = {}) =>
    changeClubRights(idle, form({ retentionMonths: '1', askWhom: 'Una', holidays: '2026-11-02', ...fields }))
  const leave = (lastDay: string, firstDay = '2026-08-01') =>
    at.club.run((tx) =>
      tx.db.squadMembership.updateMany({
        where: { clubId: tx.clubId, playerId: child() },
        data: { firstDay: new Date(firstDay), lastDay: new Date(lastDay) },
      }),
    )

  it('moves the day to answer past the club’s own holidays', async () => {
    as('administrator')
    expect(await set()).toMatchObject({ status: 'done' })
    await asked()
    expect(await requests()).toMatchObject([{ dueOn: '2026-11-03' }])
  })

  it.each([
    ['months', { retentionMonths: '0' }, 'retentionMonths'],
    ['months', { retentionMonths: '1.5' }, 'retentionMonths'],
    ['months', { retentionMonths: 'a year' }, 'retentionMonths'],
    ['holidays', { holidays: '25 December' }, 'holidays'],
  ])('is refused with %s that are none (%o)', async (_what, fields, path) => {
    as('administrator')
    expect(await set(fields)).toMatchObject({ status: 'refused', problems: [{ path }] })
  })

  it('is not shortened over somebody’s head: whoever would be erased at once is counted first', async () => {
    // In no season of the club: kept until a month after the day itself.
    await leave('2024-05-05', '2024-01-01')
    as('administrator')
    expect(await set()).toMatchObject({
      status: 'refused',
      problems: [{ path: 'retentionMonths', message: expect.stringContaining('erase 1 child at once') }],
    })
    expect((await at.club.run(getClubRights)).retentionMonths).toBeNull()
    expect(await set({ sure: 'on' })).toMatchObject({ status: 'done' })
    const { children } = await loadRequests(await viewer('administrator'))
    expect(children.map(({ name }) => name)).not.toContain('Ada Fenn')
    expect((await at.club.run((tx) => getPlayer(tx, child()))).name).toBe('Former player 1')
  })

  it('erases nobody until it is decided, and then whoever’s time is over, once', async () => {
    await leave('2026-08-20')
    // The season ends on 30 June 2027; a month later is 30 July.
    const forget = (day: string) => at.club.run((tx) => forgetChildrenWhenDue(tx, { today: day }))
    expect(await forget('2030-01-01')).toBe(0)
    as('administrator')
    expect(await set()).toMatchObject({ status: 'done' })
    expect(await forget('2027-07-30')).toBe(0)
    expect(await forget('2027-07-31')).toBe(1)
    expect(await forget('2027-07-31')).toBe(0)
    expect((await at.club.run((tx) => getPlayer(tx, child()))).name).toBe('Former player 1')
    const [erasure] = await at.club.run((tx) => tx.db.erasure.findMany({ where: { clubId: tx.clubId } }))
    expect(erasure).toMatchObject({ cause: 'retention', erasedById: null })
  })
})
