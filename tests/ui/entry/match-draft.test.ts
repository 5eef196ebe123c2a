import { describe, expect, it } from 'vitest'
import { addChange, setLine, spansOfGrid } from '#match/line-grid'
import { comeAt, hereThroughout } from '#squad/register-segments'
import {
  freshMatchDraft,
  numbersOfSpan,
  withMatchGuest,
  withMatchSegments,
  withPeriods,
} from '#ui/entry/match-draft'

const players = ['ann', 'bo'].map((id) => ({ id, name: id, keeps: true, isMember: true, isExpected: true }))
const periods = [
  { start: 0, end: 1200 },
  { start: 1500, end: 2700 },
]
const fresh = freshMatchDraft(players, periods)
const marksOf = (draft: typeof fresh) =>
  draft.grid.rows.map(({ marks }) => marks.map((mark) => mark || '.').join(' '))

describe('a match while it is typed in', () => {
  it('is cut where somebody comes late, and gives no place before', () => {
    const marked = {
      ...fresh,
      grid: setLine(setLine(fresh.grid, { row: 0, span: 0 }, 'K'), { row: 1, span: 0 }, 'F'),
    }
    const late = withMatchSegments(marked, 'bo', comeAt(hereThroughout, 600))
    expect(spansOfGrid(late.grid).map(({ start }) => start)).toEqual([0, 600, 1500])
    expect(marksOf(late)).toEqual(['K K .', '. F .'])
  })

  it('keeps places and changes when periods change, where they still are inside one', () => {
    const cut = { ...fresh, grid: setLine(addChange(fresh.grid, 600), { row: 0, span: 1 }, 'B') }
    const longer = withPeriods(cut, [
      { start: 0, end: 1500 },
      { start: 1800, end: 3300 },
    ])
    expect(longer.grid.changes).toEqual([600])
    expect(marksOf(longer)).toEqual(['. B .', '. . .'])
    expect(withPeriods(cut, [{ start: 0, end: 500 }]).grid.changes).toEqual([])
  })

  it('says how many play in each line', () => {
    const marked = setLine(setLine(fresh.grid, { row: 0, span: 0 }, 'K'), { row: 1, span: 0 }, 'F')
    expect(numbersOfSpan(marked, 0)).toEqual({ text: '1-0-0-1', count: 2 })
  })

  it('a guest has a row with nothing marked', () => {
    expect(marksOf(withMatchGuest(fresh, { id: 'guest-1', name: 'Zoe' })).at(-1)).toBe('. .')
  })
})
