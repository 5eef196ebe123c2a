import { describe, expect, it } from 'vitest'
import { guessMarks, readMark } from '#exchange/attendance/mark-words'
import { attendanceOf } from '../support/read-text'

/** Rows as `name: day meaning, …`. */
const told = (...of: Parameters<typeof attendanceOf>) =>
  attendanceOf(...of).rows.flatMap(({ result }) =>
    result.kind === 'understood'
      ? [`${result.entry.name}: ${result.entry.marks.map((m) => `${m.session.day} ${m.meaning}`).join(', ')}`]
      : [],
  )

describe('an attendance list as people have it', () => {
  it.each([
    [
      'players down, dates across',
      'Name;01/09/2026;24/09/2026\nAnn;x;\nBo;;x',
      ['Ann: 2026-09-01 here', 'Bo: 2026-09-24 here'],
    ],
    [
      'nothing above the names',
      ',1.9.26,8.9.26\nAnn,1,0\nBo,1,late',
      ['Ann: 2026-09-01 here, 2026-09-08 away', 'Bo: 2026-09-01 here, 2026-09-08 late'],
    ],
    ['dates without a year', 'Player\t3/9\t24/9\nAnn\t✓\tx', ['Ann: 2026-09-03 here, 2026-09-24 away']],
    [
      'weekdays beside the dates',
      'Player,Thu 3 Sep,Thu 24 Sep\nAnn,y,inj',
      ['Ann: 2026-09-03 here, 2026-09-24 notPlaying'],
    ],
    [
      'a title, a total column and a total row',
      'Attendance autumn,,,\nName,2026-09-01,2026-09-08,Total\nAnn,1,1,2\nTotal,1,1,2',
      ['Ann: 2026-09-01 here, 2026-09-08 here'],
    ],
    [
      'a row for each player and day',
      'Date,Player,Attendance\n1.9.2026,Ann,present\n1.9.2026,Bo,absent',
      ['Ann: 2026-09-01 here', 'Bo: 2026-09-01 away'],
    ],
    [
      'such rows without a header',
      'Ann Ash;2026-09-01;yes\nBo Birch;2026-09-01;no\nCy Cole;2026-09-01;yes',
      ['Ann Ash: 2026-09-01 here', 'Bo Birch: 2026-09-01 away', 'Cy Cole: 2026-09-01 here'],
    ],
    [
      'names as Last, First',
      'Name;2026-09-01\n"Ash, Ann";x\n"Birch, Bo";',
      ['Ann Ash: 2026-09-01 here', 'Bo Birch: '],
    ],
  ])('is understood with %s', (_what, text, expected) => {
    expect(told(text)).toEqual(expected)
  })

  it('knows a match from a practice by the word beside the date', () => {
    const reading = attendanceOf('Name,5/9/2026,5/9/2026 match,26/9/2026 v Rovers\nAnn,x,x,x')
    const sessions = reading.rows[0]?.result.kind === 'understood' ? reading.rows[0].result.entry.marks : []
    expect(sessions.map(({ session }) => [session.day, session.kind, session.title])).toEqual([
      ['2026-09-05', 'practice', ''],
      ['2026-09-05', 'match', 'match'],
      ['2026-09-26', 'match', 'v Rovers'],
    ])
  })

  it('reads how late somebody was', () => {
    const reading = attendanceOf('Name,2026-09-01,2026-09-08\nAnn,late 10,L (15 min)')
    expect(reading.rows[0]?.result).toMatchObject({
      entry: { marks: [{ lateMinutes: 10 }, { lateMinutes: 15 }] },
    })
  })

  it.each([
    ['two columns of one day', 'Name,2026-09-01,1.9.2026\nAnn,x,x', /both 2026-09-01/],
    ['no column of names', 'Date,Attendance,Code x\n2026-09-01,x,1', /names of the players/],
  ])('says what is wrong with the whole of it: %s', (_what, text, sentence) => {
    const settings = _what === 'no column of names' ? { columns: ['date', 'mark', ''] } : {}
    expect(attendanceOf(text, settings).problems).toEqual([expect.stringMatching(sentence)])
  })

  it('asks about a mark it does not know, and obeys the answer', () => {
    const text = 'Name,2026-09-01\nAnn,q\nBo,1'
    expect(attendanceOf(text).marks).toContainEqual({ key: 'q', meaning: null, times: 1 })
    expect(told(text)).toEqual(['Bo: 2026-09-01 here'])
    expect(told(text, { marks: { q: 'late' } })).toEqual(['Ann: 2026-09-01 late', 'Bo: 2026-09-01 here'])
  })
})

// Common practice, no source: what marks mean beside each other.
describe('marks', () => {
  const meaning = (...keys: string[]) => guessMarks(keys).get(keys[0] ?? '')

  it.each<[string[], string | null]>([
    [['x', ''], 'here'],
    [['x', 'late', 'inj', ''], 'here'],
    [['x', '✓'], 'away'],
    [['x', '1'], 'away'],
    [['x', '0'], 'here'],
    [['x', '-'], 'here'],
    [['x', '✓', 'a'], null],
    [['x', 'o'], null],
    [['1', '0'], 'here'],
    [['0', '1'], 'away'],
    [['late', 'x'], 'late'],
    [['inj'], 'notPlaying'],
    [['', 'x'], 'nothing'],
    [['constructor'], null],
  ])('%j: the first means %j', (keys, expected) => {
    expect(meaning(...keys)).toBe(expected)
  })

  it.each([
    ['Late 10', 'late', 10],
    ['late (5 min)', 'late', 5],
    ['L5', 'l', 5],
    ['1', '1', null],
    ['10', '10', null],
    [' ✓ ', '✓', null],
  ])('%j is the mark %j with %j minutes', (cell, key, minutes) => {
    expect(readMark(cell)).toEqual({ key, minutes })
  })
})
