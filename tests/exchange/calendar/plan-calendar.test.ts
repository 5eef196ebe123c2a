import { describe, expect, it } from 'vitest'
import {
  type CalendarPlanning,
  isCalendarReady,
  type KnownCalendarSession,
} from '#exchange/calendar/calendar-plan'
import { planCalendar } from '#exchange/calendar/plan-calendar'
import { sayCalendarOutcome } from '#exchange/calendar/say-calendar'
import { calendarOf, season } from '../support/read-text'

const known = (session: Partial<KnownCalendarSession>): KnownCalendarSession => ({
  id: 'm1',
  code: null,
  day: '2026-09-05',
  kind: 'match',
  title: 'Marl Lane',
  startsAt: null,
  place: '',
  lengthSeconds: null,
  goals: null,
  isCancelled: false,
  isWritten: false,
  ...session,
})

function planOf(
  rows: string,
  {
    sessions = [],
    answers = {},
    ...planning
  }: Partial<Omit<CalendarPlanning, 'answers'>> & { readonly answers?: Record<number, string> } = {},
) {
  const { rows: read } = calendarOf(`Day,Time,Type,Opponent,Place,Our goals,Their goals,Session\n${rows}`)
  const plan = planCalendar(read, {
    sessions,
    seasons: [season],
    today: '2026-10-01',
    countsGoals: true,
    answers: new Map(Object.entries(answers).map(([line, answer]) => [Number(line), answer])),
    ...planning,
  })
  return {
    plan,
    kinds: plan.map(({ outcome }) => outcome.kind),
    said: plan.map(({ outcome }) => sayCalendarOutcome(outcome).says),
    isReady: isCalendarReady(plan),
  }
}
const row = '2026-09-05,10:30,match,Marl Lane,Mill Field,3,1,'

describe('a calendar beside the book', () => {
  it('enters what the book does not have', () => {
    const { said, isReady } = planOf(row)
    expect(said).toEqual(['New match “Marl Lane” on 2026-09-05 at 10:30, Mill Field, 3–1 with ours first.'])
    expect(isReady).toBe(true)
  })

  it('finds the same opponent of the day, and says what changes', () => {
    const { said, isReady } = planOf(row, { sessions: [known({ title: 'v Marl  lane' })] })
    expect(said).toEqual(['Match “v Marl  lane” on 2026-09-05: at 10:30; place Mill Field; 3–1, ours first.'])
    expect(isReady).toBe(true)
  })

  it('taken in twice, changes nothing the second time', () => {
    const there = known({ startsAt: '10:30', place: 'Mill Field', goals: { ours: 3, theirs: 1 } })
    const { said, isReady } = planOf(row, { sessions: [there] })
    expect(said).toEqual(['Match “Marl Lane” on 2026-09-05 at 10:30, as the book has it.'])
    expect(isReady).toBe(false)
  })

  it('an empty cell takes nothing away', () => {
    const there = known({ startsAt: '10:30', place: 'Mill Field', goals: { ours: 3, theirs: 1 } })
    expect(planOf('2026-09-05,,match,Marl Lane,,,,', { sessions: [there] }).said).toEqual([
      'Match “Marl Lane” on 2026-09-05 at 10:30, as the book has it.',
    ])
  })

  it('asks where the day has another match under another title, and does as it is told', () => {
    const sessions = [known({ title: 'Cup' })]
    expect(planOf(row, { sessions })).toMatchObject({ kinds: ['question'], isReady: false })
    expect(planOf(row, { sessions, answers: { 2: 'new' } }).kinds).toEqual(['new'])
    expect(planOf(row, { sessions, answers: { 2: 'leaveOut' } }).kinds).toEqual(['leftOut'])
    expect(planOf(row, { sessions, answers: { 2: 'm1' } }).said).toEqual([
      'Match “Cup” on 2026-09-05: title “Marl Lane”; at 10:30; place Mill Field; 3–1, ours first.',
    ])
    expect(planOf(row, { sessions, answers: { 2: 'gone' } }).kinds).toEqual(['problem'])
  })

  it('a day of several matches asks nothing of those that are surely others', () => {
    const sessions = [known({})]
    const others = '2026-09-05,11:30,match,Sandholt,,,,\n2026-09-05,12:30,match,Thorn Green,,,,'
    expect(planOf(`${row}\n${others}`, { sessions }).kinds).toEqual(['known', 'new', 'new'])
  })

  it('a match without a title, or a practice at its time, is taken for the one of the book', () => {
    expect(planOf(row, { sessions: [known({ title: '' })] }).said[0]).toMatch(/title “Marl Lane”/)
    const practice = known({ kind: 'practice', title: 'Finishing', startsAt: '17:30' })
    const { said } = planOf('2026-09-05,17:30,practice,,Lower field,,,', { sessions: [practice] })
    expect(said).toEqual(['Practice “Finishing” on 2026-09-05 at 17:30: place Lower field.'])
  })

  it('moves a match by its code, unless it is written down', () => {
    const moved = '2026-09-06,10:30,match,Marl Lane,,,,m7'
    const there = known({ code: 'm7', startsAt: '10:30' })
    expect(planOf(moved, { sessions: [there] }).said).toEqual([
      'Match “Marl Lane” on 2026-09-05 at 10:30: moves to 2026-09-06.',
    ])
    expect(planOf(moved, { sessions: [known({ ...there, isWritten: true })] }).kinds).toEqual(['problem'])
  })

  it.each([
    ['a day of no season', '2031-09-05,,match,Marl Lane,,,,', {}, /No season of the club has 2031-09-05/],
    ['a result of a match to come', '2026-11-05,,match,Marl Lane,,1,0,', {}, /still to come/],
    ['a practice that the book has as a match', '2026-09-05,,practice,,,,,m1', {}, /has this as a match/],
    [
      'the same twice with other details',
      `2026-09-12,10:30,match,Marl Lane,A,,,\n2026-09-12,10:30,match,Marl Lane,B,,,`,
      {},
      /Line 2 has the same match/,
    ],
    [
      'one code twice',
      '2026-09-12,,match,Marl Lane,,,,c1\n2026-09-19,,match,Sandholt,,,,c1',
      {},
      /stands in line 2 too/,
    ],
  ])('%s holds everything up, with a sentence', (_what, rows, planning, said) => {
    const answer = planOf(rows, { sessions: [known({})], ...planning })
    expect(answer.said.at(-1)).toMatch(said)
    expect(answer.isReady).toBe(false)
  })

  it('counts a doubled row once', () => {
    expect(planOf(`${row}\n${row}`).kinds).toEqual(['new', 'doubled'])
  })

  it('asks about rows that came out as one of the book, and about one that was cancelled', () => {
    const twice = '2026-09-05,,match,Marl Lane,,,,\n2026-09-05,10:30,match,v Marl Lane,,,,'
    expect(planOf(twice, { sessions: [known({})] }).kinds).toEqual(['question', 'question'])
    const cancelled = planOf(row, { sessions: [known({ isCancelled: true })] })
    expect(cancelled.kinds).toEqual(['question'])
    const anew = planOf(row, { sessions: [known({ isCancelled: true })], answers: { 2: 'new' } })
    expect(anew.kinds).toEqual(['new'])
  })

  it('leaves results out where the club does not count goals, and says so', () => {
    const { plan, said } = planOf(row, { countsGoals: false, sessions: [known({})] })
    expect(said[0]).toMatch(/The result is left out: the club does not count goals\.$/)
    expect(plan[0]?.outcome).toMatchObject({
      kind: 'known',
      change: { startsAt: '10:30', place: 'Mill Field' },
    })
    expect(JSON.stringify(plan[0]?.outcome)).not.toMatch(/"ours"/)
  })
})
