import { createHash } from 'node:crypto'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { findAdult, listAdults } from '#data/adults'
import { listAudit } from '#data/audit'
import { findGuardianship, listGuardianships, recordGuardianships } from '#data/guardianships'
import { newId } from '#data/ids'
import { listLinks } from '#data/one-time-links'
import { listSquadLines } from '#data/squad-lines'
import { endAccessOf } from '#server/change-people'
import { loadFamilyLinks } from '#server/family-links-views'
import { findViewer } from '#server/find-viewer'
import { makeFamilyLink, makePersonLink, revokeFamilyLink, revokePersonLink } from '#server/link-actions'
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
import { loadPeople } from '#server/people-views'
import { loadPerson } from '#server/person-views'
import { spendLinkAs } from '#server/spend-link'
import { formOfFields } from '../support/form-of-fields'
import { aLinkingClub, aLogin, codeIn, type LinkingClub } from '../support/linking-club'
import { askAsPerson, redirectOf } from '../support/next-request'
import { ownerDatabase } from '../support/test-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const idle = { status: 'idle' } as const
const day = '2026-09-15'

let at: LinkingClub
beforeEach(async () => {
  at = await aLinkingClub()
  await askAs(at.administratorId)
})

const askAs = async (personId: string | null) =>
  askAsPerson(personId === null ? null : { clubId: at.club.id, personId })

/** Somebody comes in by a link to join. */
async function join(personId: string): Promise<string> {
  const loginId = await aLogin()
  const made = await makePersonLink(idle, formOfFields({ personId, kind: 'join' }))
  await spendLinkAs(codeIn({ value: made }), { loginId })
  return loginId
}

type Door = (previous: typeof idle, form: FormData) => Promise<unknown>

/** Every door of this folder, with a form that an administrator's is taken by. */
const doors = (): readonly (readonly [string, Door, Readonly<Record<string, string>>])[] => {
  const of = { personId: at.guardianId, playerId: at.childId }
  return [
    ['addPerson', addPerson, { name: 'Ivo Weld', role: 'coach', email: '' }],
    ['changePerson', changePerson, { personId: at.coach.personId, name: 'Kit Vale', role: 'administrator' }],
    ['endAccess', endAccess, { personId: at.guardianId }],
    ['giveAccessBack', giveAccessBack, { personId: at.guardianId }],
    [
      'addSquadLine',
      addSquadLine,
      { personId: at.headCoachId, squadId: at.squadId, kind: 'cover', firstDay: day },
    ],
    ['endLineOfSquad', endLineOfSquad, { personId: at.coach.personId, lineId: newId(), lastDay: day }],
    ['recordGuardian', recordGuardian, of],
    ['removeGuardian', removeGuardian, of],
    ['withholdComing', withholdComing, { ...of, withholdsComing: 'on' }],
    ['makePersonLink', makePersonLink, { personId: at.coach.personId, kind: 'join' }],
    ['revokePersonLink', revokePersonLink, { personId: at.coach.personId, linkId: newId() }],
  ]
}

/** All that these doors could write, as one digest; whoever asks gets a sign-in, which is none of it. */
const rows = async () => {
  const { person, guardianship, oneTimeLink, squadCoach, auditEntry } = ownerDatabase()
  const inOrder = { orderBy: { id: 'asc' } } as const
  const all = await Promise.all([
    person.findMany({ ...inOrder, omit: { loginId: true } }),
    guardianship.findMany({ orderBy: [{ personId: 'asc' }, { playerId: 'asc' }] }),
    oneTimeLink.findMany(inOrder),
    squadCoach.findMany(inOrder),
    auditEntry.findMany(inOrder),
  ])
  return createHash('sha256').update(JSON.stringify(all)).digest('hex')
}

describe('the adults of a club', () => {
  it('are for its administrator: nobody else changes one, and nothing is written', async () => {
    const before = await rows()
    for (const personId of [at.headCoachId, at.coach.personId, at.guardianId]) {
      await askAs(personId)
      for (const [name, door, form] of doors())
        expect(await door(idle, formOfFields(form)), name).toMatchObject({
          status: 'refused',
          problems: [{ message: /not yours/ }],
        })
      const viewer = await at.viewerOf(personId)
      await expect(loadPeople(viewer)).rejects.toMatchObject({ code: 'notAllowed' })
      const asked = { personId: at.guardianId }
      await expect(loadPerson(viewer, asked)).rejects.toMatchObject({ code: 'notAllowed' })
    }
    await askAs(null)
    for (const [, door, form] of doors())
      expect(await door(idle, formOfFields(form)).catch(redirectOf)).toBe('/')
    expect(await rows()).toBe(before)
  })

  it('of another club look like nobody at all, by whatever id', async () => {
    const other = await aLinkingClub('Elsewhere')
    const before = await rows()
    const viewer = await at.viewerOf(at.administratorId)
    const strange = { personId: other.guardianId, playerId: other.childId }
    const forms: readonly (readonly [Door, Readonly<Record<string, string>>])[] = [
      [changePerson, { personId: other.coach.personId, name: 'X Y', role: 'guardian' }],
      [endAccess, { personId: other.coach.personId }],
      [addSquadLine, { personId: at.headCoachId, squadId: other.squadId, kind: 'coach', firstDay: day }],
      [recordGuardian, { personId: at.guardianId, playerId: other.childId }],
      [recordGuardian, strange],
      [removeGuardian, { personId: other.guardianId, playerId: at.childId }],
      [makePersonLink, { personId: other.coach.personId, kind: 'join' }],
      [makeFamilyLink, strange],
      [revokeFamilyLink, { playerId: other.childId, linkId: newId() }],
    ]
    for (const [door, form] of forms)
      expect(await door(idle, formOfFields(form))).toMatchObject({ status: 'refused' })
    await expect(loadPerson(viewer, { personId: other.coach.personId })).rejects.toMatchObject({
      code: 'notFound',
    })
    expect(JSON.stringify(await loadPeople(viewer))).not.toContain(other.coach.personId)
    expect(await rows()).toBe(before)
  })

  it('are added with what the form asks and nothing else that is sent along', async () => {
    const login = await aLogin()
    const more = { id: newId(), clubId: newId(), loginId: login, accessEndedAt: '2020-01-01', isDemo: 'true' }
    const form = { name: '  Ivo   Weld ', role: 'coach', email: ' Ivo@Example.org ', ...more }
    const href = await addPerson(idle, formOfFields(form)).catch(redirectOf)
    const id = String(href).split('/').at(-1) ?? ''
    expect(id).not.toBe(more.id)
    expect(await at.run((tx) => findAdult(tx, id))).toEqual({
      ...{ id, name: 'Ivo Weld', role: 'coach', email: 'ivo@example.org' },
      ...{ loginId: null, accessEndedAt: null },
    })
    const change = { personId: id, name: 'Ivo Weld', role: 'helper', email: '', loginId: login }
    expect(await changePerson(idle, formOfFields(change))).toMatchObject({ status: 'done' })
    const changed = await at.run((tx) => findAdult(tx, id))
    expect(changed).toMatchObject({ role: 'helper', email: null, loginId: null })
    const [deed] = await at.run((tx) => listAudit(tx, { limit: 1 }))
    expect(deed).toMatchObject({ action: 'changePerson', objectId: id })
    expect(JSON.stringify(deed?.detail)).not.toMatch(/Ivo|example/)
  })

  it.each([
    [{ name: '   ', role: 'coach' }, 'name', /empty/],
    [{ name: '…', role: 'coach' }, 'name', /no letter/],
    [{ name: 'x'.repeat(81), role: 'coach' }, 'name', /81 characters/],
    [{ name: 'Ivo Weld', role: 'owner' }, 'role', /one of the roles/],
    [{ name: 'Ivo Weld', role: 'coach', email: 'ivo at home' }, 'email', /name@example\.org/],
    [{ name: 'Ivo Weld', role: 'coach', email: `${'a'.repeat(250)}@b.org` }, 'email', /no e-mail address/],
  ])('refuses %o in a sentence and adds nobody', async (form, path, message) => {
    const before = await rows()
    expect(await addPerson(idle, formOfFields(form))).toMatchObject({
      status: 'refused',
      problems: [{ path, message: expect.stringMatching(message) }],
    })
    expect(await rows()).toBe(before)
  })

  it('a new role holds at the next request, and a last administrator stays one', async () => {
    const form = { personId: at.coach.personId, name: 'Kit Vale', role: 'guardian' }
    expect((await at.viewerOf(at.coach.personId)).role).toBe('coach')
    await changePerson(idle, formOfFields(form))
    expect((await at.viewerOf(at.coach.personId)).role).toBe('guardian')
    const own = { personId: at.administratorId, name: 'Oda Birch', role: 'coach' }
    const refused = { status: 'refused', problems: [{ message: /Nobody else/ }] }
    expect(await changePerson(idle, formOfFields(own))).toMatchObject(refused)
    expect(await endAccess(idle, formOfFields({ personId: at.administratorId }))).toMatchObject(refused)
    await changePerson(
      idle,
      formOfFields({ personId: at.headCoachId, name: 'Lou Wynd', role: 'administrator' }),
    )
    // An invitation that nobody has taken up yet does not arrange a club.
    expect(await changePerson(idle, formOfFields(own))).toMatchObject(refused)
    await join(at.headCoachId)
    expect(await changePerson(idle, formOfFields(own))).toMatchObject({ status: 'done' })
  })

  it('two administrators who end each other’s access at once do not both go', async () => {
    await changePerson(
      idle,
      formOfFields({ personId: at.headCoachId, name: 'Lou Wynd', role: 'administrator' }),
    )
    await join(at.headCoachId)
    const [one, other] = [await at.viewerOf(at.administratorId), await at.viewerOf(at.headCoachId)]
    const answers = await Promise.all([
      endAccessOf(one, { personId: other.personId }),
      endAccessOf(other, { personId: one.personId }),
    ])
    expect(answers.filter(({ ok }) => ok)).toHaveLength(1)
    const left = (await at.run(listAdults)).filter(
      ({ role, accessEndedAt }) => role === 'administrator' && accessEndedAt === null,
    )
    expect(left).toHaveLength(1)
  })

  it('ended access closes everything at the next request, and can be given back', async () => {
    const loginId = await join(at.coach.personId)
    const session = { id: newId(), loginId, token: 'b'.repeat(64), expiresAt: new Date(Date.now() + 1e6) }
    await ownerDatabase().loginSession.create({ data: session })
    const person = { clubId: at.club.id, personId: at.coach.personId }
    expect(await findViewer(person)).not.toBeNull()
    expect(await endAccess(idle, formOfFields({ personId: person.personId }))).toMatchObject({
      status: 'done',
    })
    expect(await findViewer(person)).toBeNull()
    expect(await ownerDatabase().loginSession.count({ where: { loginId } })).toBe(0)
    await giveAccessBack(idle, formOfFields({ personId: person.personId }))
    expect(await findViewer(person)).toMatchObject({ role: 'coach' })
  })
})

describe('squads of an adult', () => {
  const line = (more: Readonly<Record<string, string>>) =>
    formOfFields({ squadId: at.squadId, kind: 'coach', firstDay: day, lastDay: '', ...more })

  it('are added and ended by days, and two that meet are refused', async () => {
    const personId = at.headCoachId
    expect(await addSquadLine(idle, line({ personId }))).toMatchObject({ status: 'done' })
    expect(await addSquadLine(idle, line({ personId, firstDay: '2026-10-01' }))).toMatchObject({
      status: 'refused',
      problems: [{ path: 'firstDay', message: /meets days/ }],
    })
    const [own] = await at.run((tx) => listSquadLines(tx, personId))
    const end = (lastDay: string, lineId = own?.id ?? '') =>
      endLineOfSquad(idle, formOfFields({ personId, lineId, lastDay }))
    expect(await end('2026-09-01')).toMatchObject({ problems: [{ path: 'lastDay', message: /before/ }] })
    expect(await end('2026-09-30')).toMatchObject({ status: 'done' })
    expect(await addSquadLine(idle, line({ personId, firstDay: '2026-10-01' }))).toMatchObject({
      status: 'done',
    })
    expect(await end('2026-10-05')).toMatchObject({ problems: [{ path: 'lastDay', message: /begin/ }] })
  })

  it('a helper helps and does not coach; made a coach, it sees no squad by having helped', async () => {
    const href = await addPerson(idle, formOfFields({ name: 'Pim Tarrow', role: 'helper' })).catch(redirectOf)
    const personId = String(href).split('/').at(-1) ?? ''
    expect(await addSquadLine(idle, line({ personId }))).toMatchObject({ problems: [{ path: 'kind' }] })
    await addSquadLine(idle, line({ personId, kind: 'helps', firstDay: '2020-01-01' }))
    expect((await at.viewerOf(personId)).squadIds).toEqual([at.squadId])
    await changePerson(idle, formOfFields({ personId, name: 'Pim Tarrow', role: 'coach' }))
    expect((await at.viewerOf(personId)).squadIds).toEqual([])
    expect(await addSquadLine(idle, line({ personId: at.guardianId }))).toMatchObject({
      problems: [{ path: 'kind', message: /another role/ }],
    })
  })
})

describe('guardians of a child', () => {
  it('are recorded by name, two for one child, and see nothing before a link was used', async () => {
    const viewer = await at.viewerOf(at.administratorId)
    const { search } = await loadPerson(viewer, { personId: at.guardianId, find: 'fENN' })
    expect(search?.found).toEqual([{ id: at.childId, name: 'Ada Fenn', squadNames: ['Otters'] }])
    for (const wild of ['%', '_', '\\'])
      expect((await loadPerson(viewer, { personId: at.guardianId, find: wild })).search?.found).toEqual([])
    for (const personId of [at.guardianId, at.otherGuardianId]) {
      const form = formOfFields({ personId, playerId: at.childId, claimedAt: '2020-01-01' })
      expect(await recordGuardian(idle, form)).toMatchObject({ status: 'done' })
      expect(await recordGuardian(idle, form)).toMatchObject({ problems: [{ message: /already/ }] })
      expect((await at.viewerOf(personId)).playerIds).toEqual([])
    }
    const recorded = await at.run((tx) => listGuardianships(tx, { playerId: at.childId }))
    expect(recorded.map(({ claimedAt, recordedById }) => [claimedAt, recordedById])).toEqual([
      [null, at.administratorId],
      [null, at.administratorId],
    ])
  })

  it('lose the page at the next request, one without the other', async () => {
    const of = { playerId: at.childId, claimedAt: new Date() }
    const both = [at.guardianId, at.otherGuardianId]
    await at.run((tx) =>
      recordGuardianships(
        tx,
        both.map((personId) => ({ ...of, personId })),
      ),
    )
    await removeGuardian(idle, formOfFields({ personId: at.guardianId, playerId: at.childId }))
    expect((await at.viewerOf(at.guardianId)).playerIds).toEqual([])
    expect((await at.viewerOf(at.otherGuardianId)).playerIds).toEqual([at.childId])
  })

  it('have time and place kept from them one by one', async () => {
    const of = { personId: at.guardianId, playerId: at.childId }
    await at.run((tx) => recordGuardianships(tx, [of, { ...of, personId: at.otherGuardianId }]))
    await withholdComing(idle, formOfFields({ ...of, withholdsComing: 'on' }))
    const withheld = async (personId: string) =>
      (await at.run((tx) => findGuardianship(tx, { ...of, personId })))?.withholdsComing
    expect([await withheld(at.guardianId), await withheld(at.otherGuardianId)]).toEqual([true, false])
  })

  it('are a coach’s to hand a link to: names and no addresses, and it takes back only links of that child', async () => {
    await at.run((tx) => recordGuardianships(tx, [{ personId: at.guardianId, playerId: at.childId }]))
    const admin = { personId: at.guardianId, name: 'Mo Fenn', role: 'guardian', email: 'mo@example.org' }
    await changePerson(idle, formOfFields(admin))
    const join = await makePersonLink(idle, formOfFields({ personId: at.headCoachId, kind: 'join' }))
    const joinId = codeIn({ value: join }).linkId
    await askAs(at.coach.personId)
    const of = { personId: at.guardianId, playerId: at.childId }
    const made = await makeFamilyLink(idle, formOfFields({ ...of, kind: 'join', expiresAt: '2099-01-01' }))
    const { linkId, secret } = codeIn({ value: made })
    const [link] = await at.run((tx) => listLinks(tx, { playerId: at.childId }))
    expect(link?.kind).toBe('family')
    const days = ((link?.expiresAt.getTime() ?? 0) - (link?.madeAt.getTime() ?? 0)) / 86_400_000
    expect(days).toBe(14)
    const coach = await at.viewerOf(at.coach.personId)
    const page = await loadFamilyLinks(coach, {
      ...{ squadId: at.squadId, playerId: at.childId },
      address: 'https://book.example.org',
    })
    expect(page.guardians).toMatchObject([{ name: 'Mo Fenn', canBeMailed: true, links: [{ state: 'open' }] }])
    expect(page.administrators).toEqual(['Oda Birch'])
    expect(JSON.stringify(page)).not.toMatch(/example\.org/)
    expect(JSON.stringify(page)).not.toContain(secret)
    const take = (id: string) => revokeFamilyLink(idle, formOfFields({ playerId: at.childId, linkId: id }))
    expect(await take(joinId)).toMatchObject({ status: 'refused' })
    expect(await take(linkId)).toMatchObject({ status: 'done' })
  })

  it('and their links are not for other squads’ coaches, guardians or helpers', async () => {
    await at.run((tx) => recordGuardianships(tx, [{ personId: at.guardianId, playerId: at.childId }]))
    const coach = await at.viewerOf(at.coach.personId)
    const asked = { squadId: at.squadId, playerId: at.childId, address: 'https://book.example.org' }
    const guardian = await at.viewerOf(at.guardianId)
    for (const viewer of [{ ...coach, squadIds: [] }, { ...coach, role: 'helper' as const }, guardian])
      await expect(loadFamilyLinks(viewer, asked)).rejects.toMatchObject({ code: 'notAllowed' })
    const elsewhere = { ...asked, playerId: newId() }
    await expect(loadFamilyLinks(coach, elsewhere)).rejects.toMatchObject({ code: 'notFound' })
  })
})
