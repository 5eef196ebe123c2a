import { describe, expect, it } from 'vitest'
import { type AttendancePlanning, isAttendanceReady } from '#exchange/attendance/attendance-plan'
import { planAttendance } from '#exchange/attendance/plan-attendance'
import { writeAttendance } from '#exchange/attendance/write-attendance'
import { readAnswers } from '#exchange/players/answer'
import { aKnownPlayer, aKnownSession, aPlanning } from '../support/known'
import { attendanceOf } from '../support/read-text'

const plan = (text: string, change: Partial<AttendancePlanning> = {}) =>
  planAttendance(attendanceOf(text).rows, aPlanning(change))
const registers = (...of: Parameters<typeof plan>) =>
  plan(...of).sessions.map((session) => [
    session.name.day,
    session.outcome.kind,
    session.register.map((line) => `${line.player} ${line.state} ${line.from}-${line.to}`),
  ])
const whyOf = (...of: Parameters<typeof plan>) =>
  plan(...of).sessions.map(({ outcome }) => (outcome.kind === 'question' ? outcome.why : outcome.kind))

const ann = aKnownPlayer({ id: 'p1', name: 'Ann' })
const bo = aKnownPlayer({ id: 'p2', name: 'Bo' })
const here = (playerId: string, from = 0) => ({ playerId, state: 'here' as const, from, to: 3600 })

describe('the register of a day', () => {
  it('has a line for whoever was there, from when to when', () => {
    const text = 'Name,2026-09-01\nAnn,1\nBo,late\nCy,late 20\nDi,inj\nEd,0\nFi,left 45'
    expect(registers(text)).toEqual([
      [
        '2026-09-01',
        'new',
        ['2 here 0-3600', '3 here 600-3600', '4 here 1200-3600', '5 notPlaying 0-3600', '7 here 0-2700'],
      ],
    ])
    expect(plan(text).sessions[0]?.away).toEqual([6])
  })

  it('takes a doubled row once, and refuses two rows that differ', () => {
    const head = 'Date,Player,Attendance\n2026-09-01,Ann,here\n'
    const twice = plan(`${head}2026-09-01,Ann,here`)
    expect(twice.doubledRows).toEqual([{ line: 3, sameAs: 2 }])
    expect(twice.sessions[0]?.register).toHaveLength(1)
    expect(whyOf(`${head}2026-09-01,Ann,away`)).toEqual(['problem'])
  })

  it('refuses someone who came after the end', () => {
    expect(whyOf('Name,2026-09-01\nAnn,late 60')).toEqual(['problem'])
  })
})

describe('a day and the book', () => {
  const text = 'Name,2026-09-01\nAnn,1\nBo,0'
  const at = (change: Parameters<typeof aKnownSession>[0]) => ({
    known: [ann, bo],
    sessions: [aKnownSession(change)],
  })

  it.each<[string, Partial<AttendancePlanning>, string]>([
    ['is new when the book has no such session', { known: [ann, bo] }, 'new'],
    ['fills a session without a register', at({ id: 's1' }), 'fill'],
    ['is the same when the book says so too', at({ id: 's1', register: [here('p1')] }), 'same'],
    [
      'is a question when the book says otherwise',
      at({ id: 's1', register: [here('p1'), here('p2')] }),
      'otherRegister',
    ],
    [
      'is a question when the book has someone late',
      at({ id: 's1', register: [here('p1', 600)] }),
      'otherRegister',
    ],
    ['is a question when the session was called off', at({ id: 's1', isCancelled: true }), 'cancelled'],
    ['is another session than a match', at({ id: 's1', kind: 'match' }), 'new'],
    [
      'is a question among two practices',
      { sessions: [aKnownSession({ id: 's1' }), aKnownSession({ id: 's2' })] },
      'severalThatDay',
    ],
    ['is a question outside every season', { seasons: [] }, 'outsideSeasons'],
    ['is a question after today', { today: '2026-08-31' }, 'afterToday'],
    [
      'is left out when a person says so',
      { today: '2026-08-31', leftOutSessions: new Set(['2026-09-01 practice ']) },
      'leftOut',
    ],
  ])('%s', (_sentence, change, expected) => {
    expect(whyOf(text, change)).toEqual([expected])
  })

  it('is a question when nobody was there', () => {
    expect(whyOf('Name,2026-09-01,2026-09-08\nAnn,0,1')).toEqual(['nobodyThere', 'new'])
  })

  it('of two sessions goes to the one with its title', () => {
    const sessions = [
      aKnownSession({ id: 's1', title: 'Morning' }),
      aKnownSession({ id: 's2', title: 'Evening' }),
    ]
    const found = plan('Name,2026-09-01 evening\nAnn,1', { sessions }).sessions[0]?.outcome
    expect(found).toEqual({ kind: 'fill', sessionId: 's2' })
  })
})

describe('the players of a list', () => {
  const kinds = (...of: Parameters<typeof plan>) => plan(...of).players.map(({ outcome }) => outcome.kind)
  const text = 'Name,2026-09-08,2026-09-01\nAnn,1,0\nNeo,1,1'

  it('are known by name, and a stranger is a question unless all strangers are to be added', () => {
    expect(kinds(text, { known: [ann], newPlayers: 'ask' })).toEqual(['known', 'question'])
    expect(plan(text, { known: [ann] }).players[1]?.outcome).toEqual({
      kind: 'new',
      code: null,
      firstDay: '2026-09-01',
    })
  })

  it.each([
    ['new', 'new'],
    ['guest', 'guest'],
    ['leaveOut', 'leftOut'],
    ['p1', 'question'],
  ])('become what a person answers: %s', (answer, kind) => {
    const answers = readAnswers({ 3: answer })
    expect(kinds(text, { known: [ann], newPlayers: 'ask', answers })[1]).toBe(kind)
  })

  it('of one name stay apart by their shirts', () => {
    const two = 'No,Name,2026-09-01\n7,Ann,1\n9,Ann,0'
    expect(kinds(two)).toEqual(['new', 'new'])
    expect(kinds(two, { known: [ann] })).toEqual(['question', 'question'])
    expect(kinds('Name,2026-09-01\nAnn,1', { known: [ann, { ...ann, id: 'p9' }] })).toEqual(['question'])
  })

  it('who are left out are in no register', () => {
    const answers = readAnswers({ 3: 'leaveOut' })
    expect(
      plan(text, { known: [ann], answers }).sessions.map((s) => s.register.map((line) => line.player)),
    ).toEqual([[], [2]])
  })
})

it('a plan is ready without open rows, questions and problems', () => {
  expect(isAttendanceReady(plan('Name,2026-09-01\nAnn,1'))).toBe(true)
  expect(isAttendanceReady(plan('Name,2026-09-01\nAnn,1\nBo,q'))).toBe(false)
  expect(
    isAttendanceReady(plan('Name,2026-09-01\nAnn,1\nBo,q', { answers: readAnswers({ 3: 'leaveOut' }) })),
  ).toBe(true)
})

it('what is written here is read as the same register, to the second', () => {
  const base = {
    day: '2026-09-01',
    kind: 'practice' as const,
    title: '=cold, wet',
    session: 's1',
    lengthSeconds: 3601,
  }
  const lines = [
    { ...base, name: 'Ann', player: 'p1', state: 'here' as const, from: 7, to: 600 },
    { ...base, name: 'Ann', player: 'p1', state: 'out' as const, from: 600, to: 3601 },
    { ...base, name: '-Bo', player: 'p2', state: 'notPlaying' as const, from: 0, to: 3601 },
    { ...base, name: 'Cy', player: 'p3', state: 'away' as const, from: null, to: null },
    {
      ...base,
      kind: 'match' as const,
      session: 's2',
      name: 'Cy',
      player: 'p3',
      state: 'here' as const,
      from: 0,
      to: 50,
    },
  ]
  const text = writeAttendance(lines)
  expect(registers(text)).toEqual([
    ['2026-09-01', 'new', ['2 here 7-600', '2 out 600-3601', '4 notPlaying 0-3601']],
    ['2026-09-01', 'new', ['5 here 0-50']],
  ])
  expect(
    plan(text).sessions.map(({ name }) => [name.kind, name.title, name.code, name.lengthSeconds]),
  ).toEqual([
    ['practice', '=cold, wet', 's1', 3601],
    ['match', '=cold, wet', 's2', 3601],
  ])
})
