import { beforeEach, describe, expect, it, vi } from 'vitest'
import { listAudit } from '#data/audit'
import { listHelperPasses } from '#data/helper-passes'
import { newId } from '#data/ids'
import { listPitchEvents } from '#data/pitch-events'
import { cancelSession } from '#data/sessions'
import { findViewer } from '#server/find-viewer'
import { makeHelperPass, takeBackHelperPass } from '#server/helper-actions'
import { hashOfSecret, passOfCode, passOfSigned, signedPass } from '#server/helper-secret'
import { loadHelpers, loadJoin } from '#server/helper-views'
import { joinPractice } from '#server/join-actions'
import { writePractice } from '#server/session-actions'
import { sign } from '#server/sign'
import { midnightAfter } from '#server/today'
import { findSignedIn } from '#server/viewer'
import { formOfFields as form } from '../support/form-of-fields'
import { askAsPerson, askWithCookie, cookieOptions, redirectOf } from '../support/next-request'
import { fetchPack, planIt, send, tapped } from '../support/pitch-club'
import { aClub, enterSession } from '../support/test-club'
import { formOf, typedPractice } from '../support/typed-session'
import { aClubForWriting, askAs, idle, twoRounds } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()
const address = 'https://book.example.org'
const dayMs = 24 * 60 * 60 * 1000

const place = () => ({ squadId: at.club.squadId, sessionId: at.sessionId })
const makePass = () => makeHelperPass(idle, form(place()))
const passes = () => at.club.run((tx) => listHelperPasses(tx, at.sessionId))
const helpersPage = async (who = at.club.coach.personId) => {
  const viewer = await findViewer({ clubId: at.club.club.id, personId: who })
  if (!viewer) throw new Error('nobody')
  return loadHelpers(viewer, { ...place(), address })
}
/** The code of the newest pass, as it is scanned. */
const codeNow = async () => (await helpersPage()).passes[0]?.link.split('/join/')[1] ?? ''
/** What scanning and pressing the button does in a browser nobody is signed in to; where it leads. */
async function joinWith(code: string): Promise<string | null> {
  askAsPerson(null)
  return joinPractice(form({ code })).then(
    () => null,
    (error) => redirectOf(error),
  )
}

beforeEach(async () => {
  // The day it is in the club: codes are made on the day of the practice.
  at.sessionId = await enterSession(at.club, { day: '2026-10-01', startsAt: '18:00' })
  await planIt(at.club, at.sessionId)
})

describe('a code for a helper', () => {
  it('is made by the coach, good until midnight in the club, with its audit row and without its secret', async () => {
    expect(await makePass()).toMatchObject({ status: 'done' })
    const [pass] = await passes()
    const code = passOfCode(await codeNow())
    expect(code).toMatchObject({ clubId: at.club.club.id, passId: pass?.id })
    expect(pass?.secretHash).toBe(hashOfSecret(code?.secret ?? ''))
    expect(code?.secret.length).toBeGreaterThan(40)
    expect(JSON.stringify(pass)).not.toContain(code?.secret)
    expect(pass?.expiresAt).toEqual(midnightAfter('Europe/London', pass?.madeAt ?? new Date()))
    const audit = await at.club.run((tx) => listAudit(tx, { limit: 1 }))
    expect(audit).toMatchObject([
      { action: 'makeHelperPass', objectId: at.sessionId, detail: { passId: pass?.id } },
    ])
  })

  it.each(['otherCoach', 'guardian'] as const)('is not made or taken back by %s', async (who) => {
    await makePass()
    const [pass] = await passes()
    askAs(at.club, who)
    expect(await makePass()).toMatchObject({ status: 'refused' })
    const takingBack = form({ ...place(), passId: pass?.id ?? '' })
    expect(await takeBackHelperPass(idle, takingBack)).toMatchObject({ status: 'refused' })
    expect(await passes()).toMatchObject([{ revokedAt: null }])
    await expect(helpersPage(at.club.guardianId)).rejects.toMatchObject({ code: 'notAllowed' })
  })

  it('is made on the day of the practice alone, at most six at a time', async () => {
    const asked = async (change: Parameters<typeof enterSession>[1]) => {
      const sessionId = await enterSession(at.club, { title: `${Math.random()}`, ...change })
      return makeHelperPass(idle, form({ squadId: at.club.squadId, sessionId }))
    }
    const message = (text: RegExp) => ({ problems: [{ message: expect.stringMatching(text) }] })
    expect(await asked({ day: '2026-10-02' })).toMatchObject(message(/on the day/))
    expect(await asked({ day: '2026-09-30' })).toMatchObject(message(/over/))
    for (let made = 0; made < 6; made += 1) expect(await makePass()).toMatchObject({ status: 'done' })
    expect(await makePass()).toMatchObject(message(/Take one of them back/))
  })
})

describe('who scans a code', () => {
  it('is told which practice it is before joining, and nobody’s name', async () => {
    await makePass()
    const page = await loadJoin(await codeNow())
    expect(page).toMatchObject({ isOpen: true, squadName: 'Otters', day: '2026-10-01', startsAt: '18:00' })
    expect(JSON.stringify(page)).not.toMatch(/Fenn|Vale/)
  })

  it('learns nothing from a code that is made up, of another installation or of another club', async () => {
    await makePass()
    const { clubId, passId, secret } = passOfCode(await codeNow()) ?? {}
    const stranger = await aClub({ isDemo: true })
    for (const code of [
      '',
      'a.b.c',
      `${clubId}.${passId}`,
      `${clubId}.${passId}.${secret}x`,
      `${clubId}.${passId}.${'A'.repeat(43)}`,
      `${clubId}.${newId()}.${secret}`,
      `${stranger.club.id}.${passId}.${secret}`,
      `${clubId}.${passId}.${secret}.${secret}`,
    ])
      expect([code, await loadJoin(code)]).toEqual([code, null])
  })

  it('joins by one button, with a cookie that goes to that practice alone until midnight', async () => {
    await makePass()
    const [pass] = await passes()
    expect(await joinWith(await codeNow())).toBe(`/pitch#${at.sessionId}`)
    expect(cookieOptions.get('turnbook-helper')).toMatchObject({
      httpOnly: true,
      sameSite: 'strict',
      path: `/api/pitch/${at.sessionId}`,
      expires: pass?.expiresAt,
    })
  })

  it('sees first names and initials, who goes where, and nothing that was agreed or is behind', async () => {
    const events = [
      tapped(0, { kind: 'guest', playerId: newId(), name: 'Zoe Pike' }),
      tapped(1, { kind: 'replan', fromTurn: 0, turns: [], sentence: 'Closes a third of what Ada lacks.' }),
    ]
    await send(at.sessionId, { events })
    await makePass()
    await joinWith(await codeNow())
    const { status, body } = await fetchPack(at.sessionId)
    expect(status).toBe(200)
    expect(body.players.map(({ name }) => name)).toEqual(['Ada F.', 'Bo L.', 'Cy M.', 'Di Q.', 'Eli R.'])
    expect(body.viewer).toEqual({ kind: 'helper', name: 'Helper', mayReplan: false })
    expect(body.plan).toMatchObject({
      apart: [],
      together: [],
      locks: [],
      proof: { sentence: '', value: 0, bound: 0 },
    })
    expect(body.plan?.turns).toHaveLength(4)
    for (const player of body.plan?.players ?? []) {
      expect(player).toMatchObject({ notInGoal: false, waitsAfterEachTurn: false, mostTurns: null })
      expect(Object.values(player.gap).every((gap) => gap === 0)).toBe(true)
    }
    // Who is not to be in goal today simply does not keep.
    expect(body.plan?.players[4]?.keeps).toBe(false)
    expect(body.events.map(({ deed }) => deed)).toMatchObject([{ name: 'Zoe P.' }, { sentence: '' }])
    expect(JSON.stringify(body)).not.toMatch(/Fenn|Pike|lacks/)
  })

  it('taps, under the pass and under no person; a plan is not changed with it', async () => {
    await makePass()
    await joinWith(await codeNow())
    const start = tapped(0, { kind: 'begin' })
    const replan = tapped(1, { kind: 'replan', fromTurn: 0, turns: [], sentence: '' })
    const { body } = await send(at.sessionId, { events: [start, replan] })
    expect(body).toMatchObject({
      stored: [start.id],
      refused: [{ id: replan.id, why: expect.stringMatching(/Only a coach/) }],
    })
    const [pass] = await passes()
    const rows = await at.club.run((tx) =>
      tx.db.pitchEvent.findMany({ select: { recordedById: true, helperPassId: true } }),
    )
    expect(rows).toEqual([{ recordedById: null, helperPassId: pass?.id }])
    expect((await helpersPage()).passes).toMatchObject([{ taps: 1 }])
  })

  it('reaches nothing else: not another practice, not a page, not a form', async () => {
    const other = await enterSession(at.club, { day: '2026-10-01', title: 'Another' })
    await makePass()
    await joinWith(await codeNow())
    expect(await fetchPack(other)).toMatchObject({ status: 404 })
    expect(await send(other, { events: [tapped(0, { kind: 'begin' })] })).toMatchObject({ status: 404 })
    expect((await at.club.run((tx) => listPitchEvents(tx, { sessionId: other }))).events).toEqual([])
    expect(await findSignedIn()).toBeNull()
    const typed = typedPractice(at.club, twoRounds, { sessionId: at.sessionId, version: '' })
    const turnedAway = await writePractice(idle, formOf(typed)).catch((error) => redirectOf(error))
    expect(turnedAway).toBe('/')
    expect(await makePass().catch((error) => redirectOf(error))).toBe('/')
  })

  it('is shut out at the next request once the code is taken back, and told so', async () => {
    await makePass()
    const code = await codeNow()
    await joinWith(code)
    expect(await fetchPack(at.sessionId)).toMatchObject({ status: 200 })
    const cookie = signedPass(passOfCode(code) as { clubId: string; passId: string })
    askAs(at.club, 'headCoach')
    const [pass] = await passes()
    const takingBack = form({ ...place(), passId: pass?.id ?? '' })
    expect(await takeBackHelperPass(idle, takingBack)).toMatchObject({ status: 'done' })
    expect(await takeBackHelperPass(idle, takingBack)).toMatchObject({ status: 'refused' })
    askAsPerson(null)
    askWithCookie('turnbook-helper', cookie)
    expect(await fetchPack(at.sessionId)).toMatchObject({
      status: 404,
      body: { why: expect.stringMatching(/ask the coach for a new code/) },
    })
    expect(await send(at.sessionId, { events: [tapped(0, { kind: 'begin' })] })).toMatchObject({
      status: 404,
    })
    expect(await loadJoin(code)).toEqual({ isOpen: false })
    expect(await joinWith(code)).toBe(`/join/${code}`)
  })

  it('is shut out after midnight, whatever its browser still holds', async () => {
    await makePass()
    const code = await codeNow()
    await joinWith(code)
    vi.useFakeTimers({ now: Date.now() + dayMs, toFake: ['Date'] })
    try {
      expect(await fetchPack(at.sessionId)).toMatchObject({ status: 404 })
      expect(await loadJoin(code)).toEqual({ isOpen: false })
    } finally {
      vi.useRealTimers()
    }
  })

  it('is shut out when the practice is cancelled', async () => {
    await makePass()
    const code = await codeNow()
    await joinWith(code)
    await at.club.run((tx) => cancelSession(tx, { sessionId: at.sessionId, by: at.club.coach }))
    expect(await fetchPack(at.sessionId)).toMatchObject({ status: 409 })
    expect(await loadJoin(code)).toEqual({ isOpen: false })
  })

  it('who is signed in as a guardian helps with the code; a coach stays a coach', async () => {
    await makePass()
    const code = await codeNow()
    await joinWith(code)
    const cookie = signedPass(passOfCode(code) as { clubId: string; passId: string })
    askAs(at.club, 'guardian')
    expect(await fetchPack(at.sessionId)).toMatchObject({ status: 404 })
    askWithCookie('turnbook-helper', cookie)
    expect((await fetchPack(at.sessionId)).body.viewer.kind).toBe('helper')
    askAs(at.club, 'coach')
    askWithCookie('turnbook-helper', cookie)
    expect((await fetchPack(at.sessionId)).body.viewer.kind).toBe('coach')
  })
})

describe('a signed pass', () => {
  it('is a pass, and nothing else that was signed here is one', () => {
    const ids = { clubId: newId(), passId: newId() }
    expect(passOfSigned(signedPass(ids))).toEqual(ids)
    expect(passOfSigned(sign(`person/${ids.clubId}/${ids.passId}`))).toBeNull()
    expect(passOfSigned(`${signedPass(ids)}x`)).toBeNull()
    expect(passOfSigned('helper/a/b')).toBeNull()
  })
})

describe('midnight in a club', () => {
  // The days on which the clocks change: the IANA time zone database, by the platform's own copy of it.
  it.each<[zone: string, from: string, midnight: string]>([
    ['Europe/London', '2026-10-01T17:00:00Z', '2026-10-01T23:00:00Z'],
    ['Europe/London', '2026-10-25T00:30:00Z', '2026-10-26T00:00:00Z'],
    ['Europe/London', '2026-03-29T12:00:00Z', '2026-03-29T23:00:00Z'],
    ['Pacific/Auckland', '2026-10-01T06:00:00Z', '2026-10-01T11:00:00Z'],
    ['Asia/Kolkata', '2026-10-01T18:29:59Z', '2026-10-01T18:30:00Z'],
    ['Asia/Kolkata', '2026-10-01T18:30:00Z', '2026-10-02T18:30:00Z'],
    // Clocks went from 24:00 to 01:00: the day of 4 September 2022 began at one.
    ['America/Santiago', '2022-09-03T20:00:00Z', '2022-09-04T04:00:00Z'],
  ])('of %s after %s is %s', (zone, from, midnight) => {
    expect(midnightAfter(zone, new Date(from))).toEqual(new Date(midnight))
  })
})
