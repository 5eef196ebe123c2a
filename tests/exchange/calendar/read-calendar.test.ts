import { describe, expect, it } from 'vitest'
import { readResult } from '#exchange/calendar/read-result'
import { timeBehindDate, timeOfDay } from '#exchange/calendar/time-of-day'
import { writeCalendar } from '#exchange/calendar/write-calendar'
import { calendarOf } from '../support/read-text'

const entries = (text: string) =>
  calendarOf(text).rows.flatMap(({ result }) => (result.kind === 'understood' ? [result.entry] : []))
const problems = (text: string) =>
  calendarOf(text).rows.flatMap(({ result }) => (result.kind === 'problem' ? result.problems : []))

describe('a calendar as people have it', () => {
  it('says day, time, kind, opponent, place and result', () => {
    const text =
      'Date;Time;Type;Opponent;H/A;Venue;Result;Code\n5.9.2026;10.30;Match;Marl Lane;A;Mill Field;3:1;\n8.9.2026;17:30;Training;;;;;\n'
    expect(entries(text)).toEqual([
      {
        day: '2026-09-05',
        startsAt: '10:30',
        kind: 'match',
        title: 'Marl Lane',
        place: 'Away, Mill Field',
        isSideOnly: false,
        lengthSeconds: null,
        goals: { ours: 3, theirs: 1 },
        code: null,
      },
      {
        day: '2026-09-08',
        startsAt: '17:30',
        kind: 'practice',
        title: '',
        place: '',
        isSideOnly: true,
        lengthSeconds: null,
        goals: null,
        code: null,
      },
    ])
  })

  it('with both sides: ours stands in every row, and the home side’s goals come first', () => {
    const text =
      'Date,Home team,Away team,Score\n2026-09-05,Reedwater,Marl Lane,3-1\n2026-09-12,Sandholt,Reedwater,3-1\n2026-09-19,Reedwater,Bye,'
    expect(calendarOf(text).columns).toContain('resultHomeFirst')
    expect(entries(text).map(({ title, place, goals }) => [title, place, goals])).toEqual([
      ['Marl Lane', 'Home', { ours: 3, theirs: 1 }],
      ['Sandholt', 'Away', { ours: 1, theirs: 3 }],
    ])
  })

  it('says that ours is not known where two sides stand in every row, or none does', () => {
    const header = 'Date,Home team,Away team\n'
    expect(calendarOf(`${header}2026-09-05,Reedwater,Marl Lane`).problems).toEqual([
      expect.stringMatching(/which one is yours/),
    ])
    expect(
      calendarOf(`${header}2026-09-05,Reedwater,Marl Lane\n2026-09-05,Sandholt,Thorn Green`).problems,
    ).toHaveLength(1)
  })

  it.each([
    ['a time behind the day', 'Date,Opponent\n2026-09-05 10:30,Marl Lane', '10:30'],
    ['midnight behind the day', 'Date,Opponent\n2026-09-05 00:00,Marl Lane', null],
    ['no header', '2026-09-05;10:30;Marl Lane match', '10:30'],
  ])('with %s', (_what, text, startsAt) => {
    expect(entries(text)).toMatchObject([{ day: '2026-09-05', startsAt, kind: 'match' }])
  })

  it.each([
    ['a day that is none', 'Date,Title\n31.2.2026,Cup', /no day of the calendar/],
    ['a time that is none', 'Date,Time\n2026-09-05,25:70', /no time of day/],
    [
      'a result that a spreadsheet made a date of',
      'Date,Opponent,Result\n2026-09-05,Marl Lane,03-Jan',
      /form Text/,
    ],
    ['a result of a practice', 'Date,Type,Result\n2026-09-05,Practice,3-1', /practice has no result/],
    ['goals of one side only', 'Date,Our goals,Their goals\n2026-09-05,3,', /both or for neither/],
    ['a word against the goals', 'Date,Opponent,Result\n2026-09-05,Marl Lane,W 1-3', /says won/],
    ['neither home nor away', 'Date,H/A\n2026-09-05,maybe', /neither home nor away/],
    ['a length that is none', 'Date,Length\n2026-09-05,an hour', /no length/],
  ])('%s is said at its row', (_what, text, said) => {
    expect(problems(text)).toEqual([expect.stringMatching(said)])
  })

  it('says which column is missing', () => {
    const ofColumns = (columns: readonly string[]) =>
      calendarOf('a;b;c\n1;2;3', { headerLine: 1, columns }).problems
    expect(ofColumns(['title', '', ''])).toEqual([expect.stringMatching(/holds the days/)])
    expect(ofColumns(['date', 'ourGoals', ''])).toEqual([expect.stringMatching(/goals of one side/)])
    expect(ofColumns(['date', 'resultHomeFirst', ''])).toEqual([expect.stringMatching(/who was at home/)])
  })
})

it.each([
  ['3-1', [3, 1]],
  ['3:1', [3, 1]],
  ['3 – 1', [3, 1]],
  ['W 3-1', [3, 1]],
  ['0-0 D', [0, 0]],
  ['', null],
  ['-:-', null],
  ['v', null],
  ['tbc', null],
])('the result %s', (text, goals) => {
  const result = readResult(text)
  expect(result.kind === 'goals' ? [result.first, result.second] : null).toEqual(goals)
  expect(result.kind).not.toBe('wrong')
})

it.each(['3', '3-1-2', '100-0', 'won', '3/1', '-3-1'])('no result: %s', (text) => {
  expect(readResult(text)).toEqual({ kind: 'wrong' })
})

it.each([
  ['17:30', '17:30'],
  ['9.05', '09:05'],
  ['17h30', '17:30'],
  ['1730', '17:30'],
  ['5:30 pm', '17:30'],
  ['5:30PM', '17:30'],
  ['12 am', '00:00'],
  ['12:15 p.m.', '12:15'],
  ['10:00:00', '10:00'],
  ['10:00 – 11:30', '10:00'],
  ['17:30 Uhr', '17:30'],
  ['tbc', null],
  ['', null],
  ['24:00', undefined],
  ['13 pm', undefined],
  ['noon', undefined],
  ['10', undefined],
])('the time %s', (text, time) => {
  expect(timeOfDay(text)).toBe(time)
})

it('the time behind a day', () => {
  expect(timeBehindDate('2026-09-05T10:30:00.000Z')).toBe('10:30')
  expect(timeBehindDate('5 Sep 2026 6:15 pm')).toBe('18:15')
  expect(timeBehindDate('2026-09-05')).toBeNull()
})

it('what is written is read back as it was', () => {
  const lines = [
    {
      day: '2026-09-05',
      startsAt: '10:30',
      kind: 'match' as const,
      title: '=Marl Lane, "Cup"',
      place: 'Away; Mill Field',
      lengthSeconds: null,
      goals: { ours: 0, theirs: 2 },
      session: 'm1',
    },
    {
      day: '2026-09-08',
      startsAt: null,
      kind: 'practice' as const,
      title: 'Match day warm-up',
      place: '',
      lengthSeconds: 4500,
      goals: null,
      session: 's2',
    },
  ]
  const back = entries(writeCalendar(lines, { countsGoals: true }))
  expect(back).toEqual(
    lines.map(({ session, ...line }) => ({ ...line, code: session, isSideOnly: line.place === '' })),
  )
  const without = writeCalendar(lines, { countsGoals: false })
  expect(without).not.toMatch(/goals/i)
})
