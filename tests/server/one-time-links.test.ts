import { beforeEach, describe, expect, it } from 'vitest'
import { findAdult } from '#data/adults'
import { listAudit } from '#data/audit'
import { listGuardianships, recordGuardianships } from '#data/guardianships'
import { newId } from '#data/ids'
import { recordGuardianOf, removeGuardianOf } from '#server/change-guardianship'
import { endAccessOf } from '#server/change-people'
import { findViewer } from '#server/find-viewer'
import { codeOfText, type LinkCode, newSecret, textOfCode } from '#server/link-code'
import { makeFamilyLinkOf, makePersonLinkOf, revokeFamilyLinkOf } from '#server/link-deeds'
import { deadLink, spendLinkAs, spendLinkToRecover } from '#server/spend-link'
import { aLinkingClub, aLogin, codeIn, type LinkingClub } from '../support/linking-club'
import { ownerDatabase } from '../support/test-club'

const address = 'https://book.example.org'
const dead = { ok: false, reasons: [{ path: '', message: deadLink }] }
const day = 24 * 60 * 60 * 1000

let at: LinkingClub
beforeEach(async () => {
  at = await aLinkingClub()
  await at.run((tx) => recordGuardianships(tx, [{ personId: at.guardianId, playerId: at.childId }]))
})

const familyLink = async (personId = at.guardianId, now = new Date()): Promise<LinkCode> => {
  const coach = await at.viewerOf(at.coach.personId)
  return codeIn(await makeFamilyLinkOf(coach, { personId, playerId: at.childId, how: 'show', address, now }))
}
const personLink = async (personId: string, kind: 'join' | 'recover') =>
  makePersonLinkOf(await at.viewerOf(at.administratorId), { personId, kind, how: 'show', address })

const ofPerson = async (personId: string) => (await findViewer({ clubId: at.club.id, personId }))?.playerIds

describe('the code of a link', () => {
  it('is drawn anew with 256 bits, and only its SHA-256 is kept', async () => {
    const secrets = new Set(Array.from({ length: 100 }, newSecret))
    expect(secrets.size).toBe(100)
    for (const secret of secrets) expect(Buffer.from(secret, 'base64url')).toHaveLength(32)
    const code = await familyLink()
    const rows = await ownerDatabase().oneTimeLink.findMany({ where: { id: code.linkId } })
    // node:crypto is the outside source here: the hash is reckoned by WebCrypto.
    const digest = await crypto.subtle.digest('SHA-256', Buffer.from(code.secret))
    expect(rows[0]?.secretHash).toBe(Buffer.from(digest).toString('hex'))
    expect(JSON.stringify(rows)).not.toContain(code.secret)
  })

  it('is read back, and nothing else is taken for one', () => {
    const code = { clubId: newId(), linkId: newId(), secret: newSecret() }
    expect(codeOfText(textOfCode(code))).toEqual(code)
    for (const text of [
      '',
      '...',
      `${textOfCode(code)}.x`,
      textOfCode({ ...code, secret: 'short' }),
      'a.b.c',
    ])
      expect(codeOfText(text)).toBeNull()
  })
})

describe('a link to a child’s page', () => {
  it('opens the page to the guardian, once', async () => {
    const [code, loginId] = [await familyLink(), await aLogin()]
    expect(await ofPerson(at.guardianId)).toEqual([])
    expect(await spendLinkAs(code, { loginId })).toMatchObject({
      value: { personId: at.guardianId, playerId: at.childId },
    })
    expect(await ofPerson(at.guardianId)).toEqual([at.childId])
    expect(await spendLinkAs(code, { loginId })).toEqual(dead)
    expect(await spendLinkAs(code, { loginId: await aLogin() })).toEqual(dead)
    const deeds = await at.run((tx) => listAudit(tx, { limit: 2 }))
    expect(deeds.map(({ action }) => action)).toEqual(['useLink', 'makeLink'])
    expect(JSON.stringify(deeds.map(({ detail }) => detail))).not.toMatch(/Fenn|Mo /)
  })

  it('is used by one of two who come at the same moment', async () => {
    const code = await familyLink()
    const logins = await Promise.all([aLogin(), aLogin(), aLogin()])
    const answers = await Promise.all(logins.map((loginId) => spendLinkAs(code, { loginId })))
    expect(answers.filter(({ ok }) => ok)).toHaveLength(1)
    expect(answers.filter(({ ok }) => !ok)).toEqual([dead, dead])
    const person = await at.run((tx) => findAdult(tx, at.guardianId))
    expect(person?.loginId).toBe(logins[answers.findIndex(({ ok }) => ok)])
  })

  it('says the same of what was taken back, replaced, run out, removed, ended, or never made', async () => {
    const loginId = await aLogin()
    const administrator = await at.viewerOf(at.administratorId)
    const coach = await at.viewerOf(at.coach.personId)

    const replaced = await familyLink()
    const revoked = await familyLink()
    expect(await spendLinkAs(replaced, { loginId })).toEqual(dead)
    await revokeFamilyLinkOf(coach, { playerId: at.childId, linkId: revoked.linkId })
    expect(await spendLinkAs(revoked, { loginId })).toEqual(dead)

    const made = new Date()
    const old = await familyLink(at.guardianId, made)
    expect(await spendLinkAs(old, { loginId, now: new Date(made.getTime() + 14 * day) })).toEqual(dead)

    const other = await aLinkingClub('Elsewhere')
    for (const wrong of [
      { ...old, secret: newSecret() },
      { ...old, linkId: newId() },
      { ...old, clubId: newId() },
      { ...old, clubId: other.club.id },
    ])
      expect(await spendLinkAs(wrong, { loginId })).toEqual(dead)

    const of = { personId: at.guardianId, playerId: at.childId }
    await removeGuardianOf(administrator, of)
    expect(await spendLinkAs(old, { loginId })).toEqual(dead)
    await recordGuardianOf(administrator, of)
    expect(await spendLinkAs(old, { loginId })).toEqual(dead)

    const last = await familyLink()
    await endAccessOf(administrator, { personId: at.guardianId })
    expect(await spendLinkAs(last, { loginId })).toEqual(dead)
    expect((await at.run((tx) => findAdult(tx, at.guardianId)))?.loginId).toBeNull()
  })

  it('gives the page to the coach whose sign-in it is used with, and leaves the second entry empty', async () => {
    const loginId = await aLogin()
    const coachId = at.coach.personId
    const join = codeIn(await personLink(coachId, 'join'))
    await spendLinkAs(join, { loginId })
    const code = await familyLink()
    expect(await spendLinkAs(code, { loginId })).toMatchObject({ value: { personId: coachId } })
    const coach = await at.viewerOf(coachId)
    expect([coach.role, coach.playerIds]).toEqual(['coach', [at.childId]])
    const left = await at.run((tx) => listGuardianships(tx, { playerId: at.childId }))
    expect(left.map(({ personId }) => personId)).toEqual([coachId])
    expect(await findViewer({ clubId: at.club.id, personId: at.guardianId })).toBeNull()
  })

  it('opens a second child to a guardian with the same sign-in, and to no other sign-in', async () => {
    const [loginId, stranger] = [await aLogin(), await aLogin()]
    await spendLinkAs(await familyLink(), { loginId })
    const second = at.playerIds[1] ?? ''
    const administrator = await at.viewerOf(at.administratorId)
    await recordGuardianOf(administrator, { personId: at.guardianId, playerId: second })
    const of = { personId: at.guardianId, playerId: second, how: 'show', address } as const
    const code = codeIn(await makeFamilyLinkOf(administrator, of))
    const refused = await spendLinkAs(code, { loginId: stranger })
    expect(refused).toMatchObject({ ok: false, reasons: [{ message: /signed in with another/ }] })
    expect(await spendLinkAs(code, { loginId })).toMatchObject({ ok: true })
    expect((await ofPerson(at.guardianId))?.toSorted()).toEqual([at.childId, second].toSorted())
  })

  it('is not made for whom nobody recorded, nor by whom it is not for', async () => {
    const coach = await at.viewerOf(at.coach.personId)
    const of = { playerId: at.childId, how: 'show', address } as const
    await expect(makeFamilyLinkOf(coach, { ...of, personId: at.otherGuardianId })).rejects.toMatchObject({
      code: 'notFound',
    })
    const idle = { ...coach, squadIds: [] }
    const guardian = await at.viewerOf(at.guardianId)
    const helper = { ...coach, role: 'helper' as const }
    for (const viewer of [idle, guardian, helper])
      await expect(makeFamilyLinkOf(viewer, { ...of, personId: at.guardianId })).rejects.toMatchObject({
        code: 'notAllowed',
      })
    const other = await aLinkingClub('Elsewhere')
    const strange = await other.viewerOf(other.coach.personId)
    await expect(makeFamilyLinkOf(strange, { ...of, personId: at.guardianId })).rejects.toMatchObject({
      code: 'notAllowed',
    })
  })
})

describe('a link to join', () => {
  it('ties a sign-in to the person, once, and refuses one that is somebody of the club', async () => {
    const [loginId, second] = [await aLogin(), await aLogin()]
    const code = codeIn(await personLink(at.headCoachId, 'join'))
    await spendLinkAs(code, { loginId })
    expect((await at.run((tx) => findAdult(tx, at.headCoachId)))?.loginId).toBe(loginId)
    expect(await spendLinkAs(code, { loginId: second })).toEqual(dead)
    const forCoach = codeIn(await personLink(at.coach.personId, 'join'))
    expect(await spendLinkAs(forCoach, { loginId })).toMatchObject({
      reasons: [{ message: /somebody of this club already/ }],
    })
    expect(await spendLinkAs(forCoach, { loginId: second })).toMatchObject({ ok: true })
  })

  it('does not bring back somebody whose access has ended', async () => {
    const loginId = await aLogin()
    await spendLinkAs(codeIn(await personLink(at.coach.personId, 'join')), { loginId })
    const code = await familyLink()
    await endAccessOf(await at.viewerOf(at.administratorId), { personId: at.coach.personId })
    expect(await spendLinkAs(code, { loginId })).toEqual(dead)
  })
})

describe('a link for a new password', () => {
  it('saves it, ends every session, and is good again when the password is refused', async () => {
    const loginId = await aLogin()
    await spendLinkAs(codeIn(await personLink(at.coach.personId, 'join')), { loginId })
    const session = { id: newId(), loginId, token: 'a'.repeat(64), expiresAt: new Date(Date.now() + day) }
    await ownerDatabase().loginSession.create({ data: session })
    const code = codeIn(await personLink(at.coach.personId, 'recover'))
    const weak = { path: 'password', message: 'is too short' }
    const save = async () => ({ ok: false as const, reasons: [weak] })
    expect(await spendLinkToRecover(code, { save })).toEqual({ ok: false, reasons: [weak] })
    expect(await ownerDatabase().loginSession.count({ where: { loginId } })).toBe(1)
    const saved: string[] = []
    const keep = async (id: string) => ({ ok: true as const, value: saved.push(id) })
    expect(await spendLinkToRecover(code, { save: keep })).toEqual({ ok: true, value: { loginId } })
    expect(await spendLinkToRecover(code, { save: keep })).toEqual(dead)
    expect(saved).toEqual([loginId])
    expect(await ownerDatabase().loginSession.count({ where: { loginId } })).toBe(0)
  })

  it('is not made for a sign-in that opens another club, by whose administrator it could be taken over', async () => {
    const loginId = await aLogin()
    const other = await aLinkingClub('Elsewhere')
    await spendLinkAs(codeIn(await personLink(at.coach.personId, 'join')), { loginId })
    const early = codeIn(await personLink(at.coach.personId, 'recover'))
    const there = await other.viewerOf(other.administratorId)
    const asked = { personId: other.headCoachId, kind: 'join', how: 'show', address } as const
    await spendLinkAs(codeIn(await makePersonLinkOf(there, asked)), { loginId })
    expect(await personLink(at.coach.personId, 'recover')).toMatchObject({
      reasons: [{ message: /another club/ }],
    })
    const save = async () => ({ ok: true as const, value: null })
    expect(await spendLinkToRecover(early, { save })).toEqual(dead)
  })
})
