import { describe, expect, it } from 'vitest'
import { setMark } from '#practice/grid-edit'
import { shapesText } from '#practice/shape-text'
import { hereThroughout, setFrom } from '#squad/register-segments'
import { withRoundMore } from '#ui/entry/add-columns'
import { markAfterTap } from '#ui/entry/brush'
import { placeAfter } from '#ui/entry/mark-grid'
import { secondsOf } from '#ui/entry/minute-field'
import {
  freshDraft,
  gridOfDraft,
  nextColumnNumber,
  withAllRounds,
  withGuest,
  withoutNames,
  withSegments,
} from '#ui/entry/practice-draft'
import { markOfKey } from '#ui/entry/practice-grid-part'
import { readPractice } from '#ui/entry/practice-reading'
import { segmentsText } from '#ui/entry/register-text'

const players = ['ann', 'bo', 'cy', 'dee'].map((id) => ({
  id,
  name: id.toUpperCase(),
  keeps: true,
  isMember: true,
  isExpected: id !== 'dee',
}))
const fresh = freshDraft({ players, design: null, lengthSeconds: 3600 })
const design = {
  id: 'd1',
  name: 'Two against one',
  themeId: null,
  rounds: [
    {
      title: 'Two against one',
      turnCount: 3,
      turnSeconds: 60,
      gapSeconds: 0,
      stations: [{ attack: 1, defend: 1, keep: 0 }],
    },
  ],
}

describe('a practice while it is typed in', () => {
  it('begins with everyone expected here, in rounds nobody is marked in', () => {
    expect(fresh.grid.rows.map(({ playerId }) => playerId)).toEqual(['ann', 'bo', 'cy'])
    expect(fresh.register.every(({ segments }) => segments === hereThroughout)).toBe(true)
    expect(fresh.grid.columns).toHaveLength(4)
  })

  it('a design gives its rounds, in which players take turns on its places', () => {
    const { grid } = freshDraft({ players, design, lengthSeconds: null })
    expect(grid.columns).toMatchObject([
      { title: 'Two against one', turnCount: 3, atATime: design.rounds[0]?.stations },
    ])
  })

  it('who left has no mark in rounds after it; marks before it stay', () => {
    const marked = [0, 1].reduce((grid, column) => setMark(grid, { row: 0, column }, 'A'), fresh.grid)
    const draft = withSegments({ ...fresh, grid: marked }, 'ann', setFrom(hereThroughout, 300, 'away'))
    expect(draft.grid.rows[0]?.marks).toEqual(['A', '', '', ''])
  })

  it('all rounds change alike, the free game excepted', () => {
    const [first, ...others] = fresh.grid.columns
    const columns = [
      ...others,
      { ...(first as NonNullable<typeof first>), isFreeGame: true, turnSeconds: 600 },
    ]
    const changed = withAllRounds({ ...fresh, grid: { ...fresh.grid, columns } }, { turnSeconds: 30 })
    expect(changed.grid.columns.map(({ turnSeconds }) => turnSeconds)).toEqual([30, 30, 30, 600])
  })

  it('a new round is like the last, with an id of its own and nobody marked', () => {
    const grid = withRoundMore(setMark(fresh.grid, { row: 0, column: 3 }, 'A'))
    expect(grid.columns.at(-1)).toMatchObject({ id: 'c5', turnSeconds: 45 })
    expect(grid.rows[0]?.marks).toEqual(['', '', '', 'A', ''])
    expect(nextColumnNumber(grid)).toBe(6)
  })

  it('no name is kept on the device', () => {
    const draft = withGuest(fresh, { id: 'guest-1', name: 'Zoe Guest' })
    expect(draft.grid.rows.at(-1)?.playerId).toBe('guest-1')
    expect(JSON.stringify(withoutNames(draft))).not.toContain('Zoe')
  })

  it('as planned, the grid is the plan dealt; without a design there is nothing to write', () => {
    const planned = { ...fresh, mode: 'plan' as const, designId: 'd1' }
    expect(gridOfDraft(planned, { players, designs: [design] }).columns).toHaveLength(3)
    expect(gridOfDraft({ ...planned, designId: null }, { players, designs: [design] }).columns).toEqual([])
  })

  it('shows what each round comes to, and what is to be put right, before it is sent', () => {
    const areas = fresh.grid.columns.map((column, index) => (index === 1 ? { ...column, areas: 2 } : column))
    const marked = setMark(
      setMark({ ...fresh.grid, columns: areas }, { row: 0, column: 0 }, 'A'),
      { row: 0, column: 1 },
      'A',
    )
    const grid = setMark(marked, { row: 1, column: 0 }, 'D')
    const reading = readPractice({ ...fresh, grid }, grid, (id) => id)
    expect(reading.summaries[0]).toMatchObject({
      shapes: [{ attack: 1, defend: 1, keep: 0 }],
      waiting: 1,
      turnCount: 6,
    })
    expect([...reading.wrongColumns]).toEqual([1])
    expect(reading.sentences).toEqual([
      'Round 2: 1 attacking do not go evenly into 2 areas. Write the area behind every A and D (A1, A2), or make it 2.',
    ])
  })
})

describe('keys and taps', () => {
  it('a letter sets, a digit is the area, P was offered and passed, delete empties', () => {
    expect(
      ['a', 'D', '2', 'p', 'Delete', 'x', '2'].map((key, index) =>
        markOfKey(index === 2 ? 'D' : index === 6 ? 'W' : 'A', key),
      ),
    ).toEqual(['A', 'D', 'D2', 'pA', '', null, null])
  })

  it('down from the last player leads to the top of the next round, and stays at the very end', () => {
    const size = { rows: 3, columns: 2 }
    expect(placeAfter('Enter', { row: 2, column: 0 }, size)).toEqual({ row: 0, column: 1 })
    expect(placeAfter('Enter', { row: 2, column: 1 }, size)).toEqual({ row: 2, column: 1 })
    expect(placeAfter('ArrowLeft', { row: 1, column: 0 }, size)).toEqual({ row: 1, column: 0 })
    expect(placeAfter('End', { row: 0, column: 1 }, size)).toEqual({ row: 2, column: 1 })
    expect(placeAfter('a', { row: 0, column: 0 }, size)).toBeNull()
  })

  it('a letter chosen beforehand is set by one tap and taken away by a second', () => {
    expect(markAfterTap('', 'D')).toBe('D')
    expect(markAfterTap('D', 'D')).toBe('')
    expect(markAfterTap('A', 'next')).toBe('D')
    expect(markAfterTap('K', 'passed')).toBe('pK')
  })
})

describe('what a person reads and types', () => {
  it('minutes with point or comma; nothing; what is no time', () => {
    expect(['12', '12.5', '12,5', ' ', '-3', 'ten', '1e3'].map(secondsOf)).toEqual([
      720,
      750,
      750,
      null,
      undefined,
      undefined,
      undefined,
    ])
  })

  it('a register in a few words', () => {
    expect(segmentsText([])).toBe('away')
    expect(segmentsText(setFrom(hereThroughout, 720, 'out'))).toBe('here, out for today from minute 12')
    expect(segmentsText(setFrom(hereThroughout, 750, 'away'))).toBe('here to minute 12.5')
    expect(segmentsText(setFrom(hereThroughout, 420, 'notPlaying'))).toBe('here, not playing from minute 7')
  })

  it('the numbers of areas, told once where they are alike', () => {
    const [three, two] = [
      { attack: 3, defend: 2, keep: 1 },
      { attack: 2, defend: 2, keep: 0 },
    ]
    expect([
      shapesText([]),
      shapesText([three]),
      shapesText([three, three]),
      shapesText([three, two]),
    ]).toEqual(['', '3v2+1', '2 × 3v2+1', '3v2+1, 2v2'])
  })
})
