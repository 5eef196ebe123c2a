import { describe, expect, it } from 'vitest'
import { matchEntrySentence } from '#match/entry-sentence'
import {
  addChange,
  copySpanBefore,
  type LineGrid,
  removeChange,
  setLine,
  spansOfGrid,
} from '#match/line-grid'
import { nextLineMark, parseLineMark } from '#match/line-mark'
import { decideMatch, type MatchEntry } from '#match/match-entry'
import { gridOfSpells, spellsOfGrid } from '#match/spells-of-grid'
import { comeAt, hereThroughout } from '#squad/register-segments'

const periods = [
  { start: 0, end: 1500 },
  { start: 1800, end: 3300 },
]
const rows = (lines: Readonly<Record<string, string>>): LineGrid['rows'] =>
  Object.entries(lines).map(([playerId, text]) => ({
    playerId,
    marks: text.split(' ').map((mark) => parseLineMark(mark === '.' ? '' : mark) ?? ''),
  }))
const grid: LineGrid = {
  periods,
  changes: [2400, 750],
  rows: rows({ ann: 'K K K K', bo: 'B M M O', cy: '. F F F', dee: 'F O B B' }),
}
const everyone = ['ann', 'bo', 'cy', 'dee'].map((playerId) => ({ playerId, from: 0, to: 3300 }))
const marksOf = (own: LineGrid) => own.rows.map((row) => row.marks.map((mark) => mark || '.').join(' '))

describe('a match as a grid', () => {
  it('periods are cut by the changes inside them, in order of time', () => {
    expect(spansOfGrid({ periods, changes: [2400, 750, 750, 1500, 1600, 9000] })).toEqual([
      { start: 0, end: 750, periodIndex: 0 },
      { start: 750, end: 1500, periodIndex: 0 },
      { start: 1800, end: 2400, periodIndex: 1 },
      { start: 2400, end: 3300, periodIndex: 1 },
    ])
  })

  it('who stays in a line has one spell a period', () => {
    const spells = spellsOfGrid(grid, everyone)
    expect(
      spells.ok &&
        spells.value.map(({ playerId, line, start, end }) => `${playerId} ${line} ${start}-${end}`),
    ).toEqual([
      'ann keeper 0-1500',
      'ann keeper 1800-3300',
      'bo back 0-750',
      'bo middle 750-1500',
      'bo middle 1800-2400',
      'cy forward 750-1500',
      'cy forward 1800-3300',
      'dee forward 0-750',
      'dee back 1800-3300',
    ])
  })

  it('spells opened again give the same grid, and the same spells', () => {
    const spells = spellsOfGrid(grid, everyone)
    const opened = gridOfSpells({ periods, spells: spells.ok ? spells.value : [] }, [
      'ann',
      'bo',
      'cy',
      'dee',
    ])
    expect(marksOf(opened)).toEqual(['K K K K', 'B M M .', '. F F F', 'F . B B'])
    expect(spellsOfGrid(opened, everyone)).toEqual(spells)
  })

  it('a change cuts a span in two with the same marks; taken out again, the grid is as before', () => {
    const cut = addChange(grid, 2100)
    expect(marksOf(cut)[1]).toBe('B M M M O')
    expect(removeChange(cut, 3)).toEqual({ ...grid, changes: [2400, 750] })
    expect(addChange(grid, 1500)).toBe(grid)
    expect(removeChange(grid, 2)).toBe(grid)
  })

  it('marks are set one by one, or copied from the span before', () => {
    expect(marksOf(setLine(grid, { row: 2, span: 0 }, 'B'))[2]).toBe('B F F F')
    expect(marksOf(copySpanBefore(grid, 1))).toEqual(['K K K K', 'B B M O', '. . F F', 'F F B B'])
  })

  it('letters in any case, and taps in a circle', () => {
    expect(['k', ' B ', 'm', 'F', 'o', ''].map(parseLineMark)).toEqual(['K', 'B', 'M', 'F', 'O', ''])
    expect(['A', 'x', 'constructor'].map(parseLineMark)).toEqual([null, null, null])
    expect(nextLineMark('O')).toBe('')
  })
})

describe('a typed-in match', () => {
  const entry = (change: Partial<MatchEntry> = {}): MatchEntry => ({
    grid,
    register: everyone.map(({ playerId }) => ({ playerId, segments: hereThroughout })),
    ...change,
  })
  const sentences = (typed: MatchEntry) => {
    const decided = decideMatch(typed)
    return decided.ok
      ? []
      : decided.reasons.map((refusal) =>
          matchEntrySentence(refusal, { grid: typed.grid, nameOf: (id) => id }),
        )
  }

  it('comes to its register and spells', () => {
    const decided = decideMatch(entry())
    expect(decided.ok && decided.value.spells).toHaveLength(9)
    expect(decided.ok && decided.value.register[0]).toEqual({
      playerId: 'ann',
      state: 'here',
      from: 0,
      to: 3300,
    })
  })

  it('who came during a span cannot have played all of it', () => {
    const register = entry().register.map((own) =>
      own.playerId === 'dee' ? { ...own, segments: comeAt(hereThroughout, 300) } : own,
    )
    expect(sentences(entry({ register }))).toEqual([
      'dee plays from minute 0 but was not there for all of that time. Empty that cell, add a change at the minute dee came or left, or correct when dee was there.',
    ])
  })

  it('a span that was forgotten is refused; a match of which only the register is known is not', () => {
    const forgotten = { ...grid, rows: rows({ ann: 'K K K .', bo: 'B M M .' }) }
    expect(sentences(entry({ grid: forgotten }))).toEqual([
      'Nobody plays from minute 40. Copy the time before it, or take that change out.',
    ])
    expect(sentences(entry({ grid: { ...grid, rows: rows({ ann: '. . . .' }) } }))).toEqual([])
  })

  it('periods must be in order, have a length, and be there', () => {
    const wrong = [
      { start: 0, end: 1500 },
      { start: 1200, end: 1200 },
    ]
    expect(sentences(entry({ grid: { ...grid, periods: wrong, changes: [] } }))).toEqual([
      'Period 2 does not end after it begins. Write a later end.',
      'Period 2 begins before the one before it has ended (minute 25). Make it begin then or later.',
    ])
    expect(sentences(entry({ grid: { ...grid, periods: [], changes: [] } }))).toEqual([
      'The match has no periods. Write at least one, with the minutes it began and ended.',
    ])
  })
})
