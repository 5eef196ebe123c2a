import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { listRegister, recordRegister } from '#data/register-lines'
import {
  cancelSession,
  changeSession,
  findSession,
  getSession,
  listSessions,
  markWritten,
  recordSessions,
} from '#data/sessions'
import { loadSquadWritten } from '#data/written-sessions'
import { aClub, aSession, enterSession, noon, type TestClub } from '../support/test-club'

const season = (club: TestClub) => ({ squadId: club.squadId, from: '2026-08-01', to: '2027-06-30' })

describe('sessions', () => {
  it('are read as they were entered, in order of time', async () => {
    const club = await aClub()
    const entered = [
      aSession({
        squadId: club.squadId,
        day: '2026-10-25',
        startsAt: '18:30',
        lengthSeconds: 5400,
        title: 'Gates',
      }),
      aSession({ squadId: club.squadId, day: '2026-10-25', startsAt: '09:00', code: 's17' }),
      aSession({
        squadId: club.squadId,
        day: '2026-10-24',
        kind: 'match',
        periods: [
          { start: 0, end: 1500 },
          { start: 1800, end: 3300 },
        ],
        ledById: club.headCoachId,
        goals: { ours: 2, theirs: 0 },
      }),
      aSession({ squadId: club.squadId, day: '2026-10-26', kind: 'match', periods: null }),
    ]
    await club.run((tx) => recordSessions(tx, entered))
    const asRead = entered.map((one) => ({
      goals: null,
      themeId: null,
      ...one,
      place: '',
      written: 'notWritten',
      writtenById: null,
      writtenAt: null,
      isCancelled: false,
    }))
    const sessions = await club.run((tx) => listSessions(tx, season(club)))
    expect(sessions).toEqual([asRead[2], asRead[1], asRead[0], asRead[3]])
    const matches = await club.run((tx) =>
      listSessions(tx, { ...season(club), kind: 'match', to: '2026-10-25' }),
    )
    expect(matches).toEqual([asRead[2]])
    expect(await club.run((tx) => findSession(tx, newId()))).toBeNull()
  })

  it('say how, by whom and when they were written, until that is taken back', async () => {
    const club = await aClub()
    const sessionId = await enterSession(club)
    const mark = (written: 'tapped' | 'notWritten') =>
      club.run((tx) => markWritten(tx, { sessionIds: [sessionId], written, by: club.coach }))
    await mark('tapped')
    const { personId } = club.coach
    expect(await club.run((tx) => getSession(tx, sessionId))).toMatchObject({
      written: 'tapped',
      writtenById: personId,
      writtenAt: noon,
    })
    await mark('notWritten')
    expect(await club.run((tx) => getSession(tx, sessionId))).toMatchObject({
      writtenById: null,
      writtenAt: null,
    })
  })

  it('change their frame, and only what is named of it', async () => {
    const club = await aClub()
    const sessionId = await enterSession(club, { kind: 'match', title: 'Away' })
    await club.run((tx) =>
      changeSession(tx, sessionId, { day: '2026-12-31', periods: [{ start: 0, end: 600 }] }),
    )
    expect(await club.run((tx) => getSession(tx, sessionId))).toMatchObject({
      title: 'Away',
      day: '2026-12-31',
      periods: [{ start: 0, end: 600 }],
    })
    await club.run((tx) => changeSession(tx, sessionId, { title: '', periods: null }))
    expect(await club.run((tx) => getSession(tx, sessionId))).toMatchObject({ title: '', periods: null })
    await expect(club.run((tx) => changeSession(tx, newId(), { title: '' }))).rejects.toMatchObject({
      code: 'notFound',
    })
  })

  it('can be cancelled, and then count for nothing', async () => {
    const club = await aClub()
    const sessionId = await enterSession(club)
    await club.run((tx) => cancelSession(tx, { sessionId, by: club.coach }))
    expect(await club.run((tx) => getSession(tx, sessionId))).toMatchObject({ isCancelled: true })
    expect(await club.run((tx) => loadSquadWritten(tx, season(club)))).toEqual([])
  })
})

describe('a register', () => {
  it('is read as it was written; lines written later take the place of the players’ earlier ones', async () => {
    const club = await aClub()
    const [first, second, third] = [...club.playerIds].sort() as [string, string, string]
    const sessionId = await enterSession(club)
    const line = (
      playerId: string,
      from: number,
      to: number,
      state: 'here' | 'notPlaying' | 'out' = 'here',
    ) => ({
      playerId,
      from,
      to,
      state,
    })
    const write = (lines: ReturnType<typeof line>[], alsoClear: string[] = []) =>
      club.run((tx) => recordRegister(tx, { sessionId, lines, alsoClear, by: club.coach }))
    await write([line(first, 0, 3600), line(second, 0, 3600), line(third, 0, 3600)])
    const corrected = [
      line(second, 300, 900),
      line(second, 900, 1200, 'notPlaying'),
      line(second, 1200, 1300, 'out'),
    ]
    await write(corrected.toReversed(), [third])
    expect(await club.run((tx) => listRegister(tx, sessionId))).toEqual([line(first, 0, 3600), ...corrected])
  })
})
