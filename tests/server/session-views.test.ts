import { describe, expect, it } from 'vitest'
import type { Viewer } from '#access/viewer'
import { recordRegister } from '#data/register-lines'
import { cancelSession, markWritten } from '#data/sessions'
import { recordSquadCoach } from '#data/squad-coaches'
import { recordTurns, voidTurnEvent } from '#data/turn-events'
import { loadNewSession, loadSessionList } from '#server/session-list-views'
import { loadSessionPage } from '#server/session-views'
import { loadWritingPage } from '#server/writing-views'
import { aClub, enterSession, noon, type TestClub } from '../support/test-club'

function viewerOf(club: TestClub, change: Partial<Viewer> = {}): Viewer {
  return {
    clubId: club.club.id,
    personId: club.coach.personId,
    name: 'Kit Vale',
    role: 'coach',
    squadIds: [club.squadId],
    playerIds: [],
    ...change,
  }
}

async function aCoachedClub(): Promise<TestClub> {
  const club = await aClub({ players: 5, isDemo: false })
  await club.run(async (tx) => {
    const { squadId, coach, headCoachId } = club
    const line = { squadId, lastDay: null }
    await recordSquadCoach(tx, { ...line, personId: coach.personId, kind: 'coach', firstDay: '2020-08-01' })
    await recordSquadCoach(tx, { ...line, personId: headCoachId, kind: 'cover', firstDay: '2020-08-01' })
  })
  return club
}

const refusedTo = [
  ['a coach of other squads', (club: TestClub) => viewerOf(club, { squadIds: [] })],
  [
    'a guardian',
    (club: TestClub) => viewerOf(club, { role: 'guardian', squadIds: [], playerIds: [...club.playerIds] }),
  ],
  ['a helper', (club: TestClub) => viewerOf(club, { role: 'helper' })],
] as const

describe.each(refusedTo)('to %s', (_who, viewer) => {
  it('the list, a session, the form and the page of writing are all refused', async () => {
    const club = await aCoachedClub()
    const at = { squadId: club.squadId, sessionId: await enterSession(club) }
    const refused = { code: 'notAllowed' }
    await expect(loadSessionList(viewer(club), at)).rejects.toMatchObject(refused)
    await expect(loadNewSession(viewer(club), at)).rejects.toMatchObject(refused)
    await expect(loadSessionPage(viewer(club), at)).rejects.toMatchObject(refused)
    await expect(loadWritingPage(viewer(club), at)).rejects.toMatchObject(refused)
  })
})

describe('the list of practices and matches', () => {
  it('is in order of days, and says what is written, cancelled, and led by a cover', async () => {
    const club = await aCoachedClub()
    const [early, late, cancelled] = [
      await enterSession(club, { day: '2026-08-04', ledById: club.headCoachId }),
      await enterSession(club, { day: '2026-09-29', ledById: club.coach.personId }),
      await enterSession(club, { day: '2026-09-01' }),
    ]
    await club.run(async (tx) => {
      await markWritten(tx, { sessionIds: [late], written: 'roundByRound', by: club.coach })
      await cancelSession(tx, { sessionId: cancelled, by: club.coach })
    })
    const list = await loadSessionList(viewerOf(club), club)
    const all = [...list.toCome.toReversed(), ...list.held]
    expect(all.map(({ id }) => id)).toEqual([late, cancelled, early])
    expect(all.map(({ written }) => written)).toEqual(['roundByRound', 'notWritten', 'notWritten'])
    expect(all.map(({ isCancelled }) => isCancelled)).toEqual([false, true, false])
    expect(all.map(({ coveredByName }) => coveredByName)).toEqual([null, null, 'Lou Wynd'])
  })
})

describe('a session', () => {
  it('is told with everything that was written, corrections too, with by whom and when', async () => {
    const club = await aCoachedClub()
    const sessionId = await enterSession(club)
    const [ann = '', bo = ''] = club.playerIds
    const turn = { start: 0, end: 60, themeId: null, stations: [{ attack: [ann], defend: [bo], keep: [] }] }
    const corrector = { personId: club.headCoachId, at: new Date(noon.getTime() + 60_000) }
    await club.run(async (tx) => {
      const lines = [ann, bo].map((playerId) => ({ playerId, state: 'here' as const, from: 0, to: 600 }))
      await recordRegister(tx, { sessionId, lines, by: club.coach })
      const [first = ''] = await recordTurns(tx, {
        sessionId,
        turns: [turn, { ...turn, start: 60, end: 120 }],
        by: club.coach,
      })
      await voidTurnEvent(tx, { sessionId, eventId: first, by: corrector })
      await recordRegister(tx, {
        sessionId,
        lines: [{ playerId: bo, state: 'here', from: 30, to: 600 }],
        by: corrector,
      })
    })
    const page = await loadSessionPage(viewerOf(club), { squadId: club.squadId, sessionId })
    const wroteIt = { byName: 'Kit Vale', at: noon }
    const correctedIt = { byName: 'Lou Wynd', at: corrector.at }
    expect(page.history.events.map(({ written, corrected }) => [written, corrected])).toEqual([
      [wroteIt, correctedIt],
      [wroteIt, null],
    ])
    expect(page.history.correctedLines).toMatchObject([
      { value: { playerId: bo, from: 0 }, written: wroteIt, corrected: correctedIt },
    ])
    expect(page.players.map(({ name }) => name)).toContain('Ada Fenn')
  })

  it('of another squad is not there', async () => {
    const [club, other] = [await aCoachedClub(), await aClub({ name: 'Millbrook' })]
    const sessionId = await enterSession(other)
    const at = { squadId: club.squadId, sessionId }
    await expect(loadSessionPage(viewerOf(club), at)).rejects.toMatchObject({ code: 'notFound' })
    await expect(loadWritingPage(viewerOf(club), at)).rejects.toMatchObject({ code: 'notFound' })
  })
})

describe('the page of writing', () => {
  it('expects the members of the day, knows who may keep, and opens what stands', async () => {
    const club = await aCoachedClub()
    const sessionId = await enterSession(club)
    const [ann = '', bo = ''] = club.playerIds
    const turn = { start: 0, end: 60, themeId: null, stations: [{ attack: [ann], defend: [bo], keep: [] }] }
    await club.run((tx) => recordTurns(tx, { sessionId, turns: [turn], by: club.coach }))
    const page = await loadWritingPage(viewerOf(club), { squadId: club.squadId, sessionId })
    expect(page.players.filter(({ isExpected, isMember }) => isExpected && isMember)).toHaveLength(5)
    expect(page.players.filter(({ keeps }) => !keeps)).toHaveLength(1)
    expect(page.turns).toMatchObject([{ turn }])
  })

  it('has another version as soon as anything was written', async () => {
    const club = await aCoachedClub()
    const sessionId = await enterSession(club)
    const [ann = ''] = club.playerIds
    const versionNow = async () =>
      (await loadWritingPage(viewerOf(club), { squadId: club.squadId, sessionId })).version
    const versions = [await versionNow()]
    const line = { playerId: ann, state: 'here' as const, from: 0, to: 600 }
    await club.run((tx) => recordRegister(tx, { sessionId, lines: [line], by: club.coach }))
    versions.push(await versionNow())
    await club.run((tx) => recordRegister(tx, { sessionId, lines: [], alsoClear: [ann], by: club.coach }))
    versions.push(await versionNow())
    await club.run((tx) =>
      markWritten(tx, { sessionIds: [sessionId], written: 'typedLater', by: club.coach }),
    )
    versions.push(await versionNow())
    await club.run((tx) => cancelSession(tx, { sessionId, by: club.coach }))
    versions.push(await versionNow())
    expect(new Set(versions).size).toBe(versions.length)
  })
})
