import { describe, expect, it } from 'vitest'
import type { PracticeGrid } from '#practice/grid'
import {
  addRow,
  copyColumnBefore,
  insertColumn,
  removeColumn,
  setMark,
  splitColumn,
  swapPlayers,
} from '#practice/grid-edit'
import { turnsOfGrid } from '#practice/grid-turns'
import { aColumn, aGrid, aRegister } from '../support/grid-builder'

function marksOf(grid: PracticeGrid): readonly string[] {
  return grid.rows.map((row) => `${row.playerId} ${row.marks.map((mark) => mark || '.').join(' ')}`)
}

describe('editing the grid', () => {
  it('sets one mark, even in a row that is shorter than the columns', () => {
    const grid = { ...aGrid('ann A D\nbo D A'), rows: [{ playerId: 'ann', marks: [] }] }
    expect(marksOf(setMark(grid, { row: 0, column: 1 }, 'K'))).toEqual(['ann . K'])
    expect(setMark(grid, { row: 0, column: 2 }, 'K')).toBe(grid)
  })

  it('copies the column before with sides swapped: keepers and who waits stay, a pass is not copied', () => {
    const grid = aGrid('ann A1 .\nbo D2 A\ncy K D\ndee W K\neve pA A')
    expect(marksOf(copyColumnBefore(grid, { column: 1, swap: true }))).toEqual([
      'ann A1 D1',
      'bo D2 A2',
      'cy K K',
      'dee W W',
      'eve pA .',
    ])
    expect(marksOf(copyColumnBefore(grid, { column: 1, swap: false }))[1]).toBe('bo D2 D2')
    expect(copyColumnBefore(grid, { column: 0, swap: true })).toBe(grid)
  })

  it('puts columns in and takes them out with their marks', () => {
    const grid = insertColumn(aGrid('ann A D\nbo D A'), 1, aColumn({ id: 'new' }))
    expect(marksOf(grid)).toEqual(['ann A . D', 'bo D . A'])
    expect(marksOf(removeColumn(grid, 0))).toEqual(['ann . D', 'bo . A'])
  })

  it('a round opened into its turns says the same', () => {
    const grid = aGrid('ann A D\nbo D A\ncy K W', [
      { turnCount: 3, turnSeconds: 40, gapSeconds: 20 },
      { turnCount: 2 },
    ])
    const split = splitColumn(grid, 0)
    expect(split.columns).toHaveLength(4)
    expect(turnsOfGrid(split, aRegister(split))).toEqual(turnsOfGrid(grid, aRegister(grid)))
  })

  it('two players exchange their places in some columns only', () => {
    const grid = aGrid('ann A D K\nbo D A W')
    const swapped = swapPlayers(grid, { players: ['ann', 'bo'], from: 1, to: 2 })
    expect(marksOf(swapped)).toEqual(['ann A A W', 'bo D D K'])
    expect(swapPlayers(grid, { players: ['ann', 'nobody'], from: 0, to: 2 })).toBe(grid)
  })

  it('one more player is a row without marks, once', () => {
    const grid = addRow(aGrid('ann A D'), 'guest')
    expect(marksOf(grid)).toEqual(['ann A D', 'guest . .'])
    expect(addRow(grid, 'guest')).toBe(grid)
  })
})
