import { beforeEach, describe, expect, it, vi } from 'vitest'
import { listAudit } from '#data/audit'
import { newId } from '#data/ids'
import { recordPeople } from '#data/people'
import { recordSquadCoach } from '#data/squad-coaches'
import { recordSquads } from '#data/squads'
import type { PitchToday } from '#pitch/pitch-today'
import { findViewer } from '#server/find-viewer'
import { homeOf } from '#server/home-of'
import { answerToday } from '#server/pitch-door'
import { writePractice } from '#server/session-actions'
import { loadSessionPage } from '#server/session-views'
import { askAsPerson } from '../support/next-request'
import { fetchPack, planIt, read, send, tapped } from '../support/pitch-club'
import { enterSession } from '../support/test-club'
import { formOf, typedPractice } from '../support/typed-session'
import { aClubForWriting, askAs, idle, twoRounds } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()
let helperId = ''
let yesterdays = ''
let lastMonths = ''
let ofOtherSquad = ''

const askAsHelper = () => askAsPerson({ clubId: at.club.club.id, personId: helperId })
const today = async () => read<PitchToday>(await answerToday())

beforeEach(async () => {
  // It is 1 October 2026 in the club.
  at.sessionId = await enterSession(at.club, { day: '2026-10-01', startsAt: '18:00', title: 'Cones' })
  yesterdays = await enterSession(at.club, { day: '2026-09-30' })
  lastMonths = await enterSession(at.club, { day: '2026-09-08', title: 'Long ago' })
  await planIt(at.club, at.sessionId)
  helperId = newId()
  const otherSquad = newId()
  await at.club.run(async (tx) => {
    await recordPeople(tx, [{ id: helperId, name: 'Pim Tarrow', role: 'helper' }])
    const own = { squadId: at.club.squadId, personId: helperId, kind: 'helps' as const }
    await recordSquadCoach(tx, { ...own, firstDay: '2026-09-01', lastDay: null })
    await recordSquads(tx, [{ id: otherSquad, name: 'Herons', ageLimit: 12 }])
  })
  ofOtherSquad = await enterSession(at.club, { squadId: otherSquad, day: '2026-10-01' })
  askAsHelper()
})

describe('somebody of the club who helps', () => {
  it('begins at the pitch, with today’s practices of its squads', async () => {
    const viewer = await findViewer({ clubId: at.club.club.id, personId: helperId })
    expect(viewer && homeOf(viewer)).toBe('/pitch')
    expect(await today()).toMatchObject({ status: 200, body: { isHelper: true } })
    expect((await today()).body.practices).toEqual([
      {
        sessionId: at.sessionId,
        kind: 'practice',
        squadName: 'Otters',
        day: '2026-10-01',
        title: 'Cones',
        startsAt: '18:00',
      },
    ])
  })

  it('sees first names and initials, and nothing that was agreed or is behind', async () => {
    const { status, body } = await fetchPack(at.sessionId)
    expect(status).toBe(200)
    expect(body.viewer).toEqual({ kind: 'helper', name: 'Pim Tarrow', mayReplan: false })
    expect(body.players.map(({ name }) => name)).toEqual(['Ada F.', 'Bo L.', 'Cy M.', 'Di Q.', 'Eli R.'])
    expect(body.plan).toMatchObject({ apart: [], together: [], locks: [], proof: { sentence: '', value: 0 } })
    expect(JSON.stringify(body)).not.toMatch(/Fenn|Larch|As fair as/)
  })

  it('taps under its own name, and changes no plan', async () => {
    const begin = tapped(0, { kind: 'begin' })
    const replan = tapped(1, { kind: 'replan', fromTurn: 0, turns: [], sentence: '' })
    const { body } = await send(at.sessionId, { events: [begin, replan] })
    expect(body.stored).toEqual([begin.id])
    expect(body.refused).toMatchObject([{ id: replan.id, why: expect.stringMatching(/Only a coach/) }])
    const kept = { recordedById: true, helperPassId: true }
    const rows = await at.club.run((tx) => tx.db.pitchEvent.findMany({ select: kept }))
    expect(rows).toEqual([{ recordedById: helperId, helperPassId: null }])
    const [audit] = await at.club.run((tx) => listAudit(tx, { limit: 1 }))
    expect(audit).toMatchObject({ action: 'tapAtPitch', objectId: at.sessionId, personName: 'Pim Tarrow' })
  })

  it('takes back its own “out for today”, and nobody else’s', async () => {
    const [first = '', second = ''] = at.club.playerIds
    const out = (playerId: string, second: number) =>
      tapped(second, { kind: 'register', playerId, state: 'out' })
    const own = out(first, 1)
    await send(at.sessionId, { events: [own] })
    askAs(at.club, 'coach')
    const coachs = out(second, 2)
    await send(at.sessionId, { events: [coachs] })
    askAsHelper()
    const undo = (undoes: string, at: number) => tapped(at, { kind: 'undo', undoes })
    const [ownBack, coachsBack] = [undo(own.id, 3), undo(coachs.id, 4)]
    const { body } = await send(at.sessionId, { events: [ownBack, coachsBack] })
    expect(body.stored).toEqual([ownBack.id])
    expect(body.refused).toMatchObject([{ id: coachsBack.id, why: expect.stringMatching(/stays out/) }])
  })

  it('may send what it tapped yesterday, and opens nothing older, nor of another squad', async () => {
    expect(await fetchPack(yesterdays)).toMatchObject({ status: 200 })
    for (const closed of [lastMonths, ofOtherSquad, newId()]) {
      expect(await fetchPack(closed)).toMatchObject({ status: 404 })
      const { status } = await send(closed, { events: [tapped(0, { kind: 'begin' })] })
      expect(status).toBe(404)
    }
  })

  it('has no other page and no form', async () => {
    const viewer = await findViewer({ clubId: at.club.club.id, personId: helperId })
    if (!viewer) throw new Error('nobody')
    const place = { squadId: at.club.squadId, sessionId: at.sessionId }
    await expect(loadSessionPage(viewer, place)).rejects.toMatchObject({ code: 'notAllowed' })
    const typed = typedPractice(at.club, twoRounds, { sessionId: at.sessionId, version: '' })
    expect(await writePractice(idle, formOf(typed))).toMatchObject({ status: 'refused' })
  })

  it('is shut out at the next request when the role or the squad is taken away', async () => {
    expect(await fetchPack(at.sessionId)).toMatchObject({ status: 200 })
    await at.club.run((tx) =>
      tx.db.squadCoach.updateMany({
        where: { personId: helperId },
        data: { lastDay: new Date('2026-09-30T00:00:00Z') },
      }),
    )
    expect(await fetchPack(at.sessionId)).toMatchObject({ status: 404 })
    expect((await today()).body.practices).toEqual([])
  })
})

describe('the list of today', () => {
  it('is a coach’s own too, empty for a guardian, and for nobody signed out', async () => {
    askAs(at.club, 'coach')
    expect((await today()).body).toMatchObject({ isHelper: false, practices: [{ sessionId: at.sessionId }] })
    askAs(at.club, 'guardian')
    expect((await today()).body).toEqual({ isHelper: false, practices: [] })
    askAsPerson(null)
    expect(await today()).toMatchObject({ status: 401, body: { why: expect.stringMatching(/signed out/) } })
  })
})
