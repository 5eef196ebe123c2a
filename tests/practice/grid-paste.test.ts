import { describe, expect, it } from 'vitest'
import { pasteBlock, pasteSentence } from '#practice/grid-paste'
import { aGrid } from '../support/grid-builder'

const names = new Map([
  ['p1', 'Ann O’Brien'],
  ['p2', 'Bo'],
  ['p3', 'Bo'],
  ['p4', 'Łukasz'],
])
const grid = aGrid('p1 . . .\np2 . . .\np3 . . .\np4 . . .')

function paste(text: string, at = { row: 0, column: 0 }) {
  const pasted = pasteBlock(grid, { text, at, names })
  return pasted.ok
    ? pasted.value.rows.map((row) => row.marks.map((mark) => mark || '.').join(' '))
    : pasted.reasons.map(pasteSentence)
}

describe('pasting a block of a spreadsheet', () => {
  it('is laid over the grid from the cell on', () => {
    expect(paste('a\td\r\nD2\tk\r\n', { row: 1, column: 1 })).toEqual(['. . .', '. A D', '. D2 K', '. . .'])
  })

  it('empty cells empty the grid’s, quotes and spaces do not matter', () => {
    expect(paste('"A";;" d "')).toEqual(['A . D', '. . .', '. . .', '. . .'])
  })

  it('a first column of names says whose line it is', () => {
    expect(paste('łukasz\tA\tD\nAnn  O’Brien\tK\tW')).toEqual(['K W .', '. . .', '. . .', 'A D .'])
  })

  it('one cell that is no mark refuses all of it, with its place', () => {
    expect(paste('A\tD\nA\tx')).toEqual([
      'Line 2, cell 2 of what you pasted is “x”: write A, D, K or W there, with an area number behind it if need be (A2).',
    ])
  })

  it('a name nobody has, and a name two have, are refused', () => {
    expect(paste('Zed\tA\nBo\tD')).toEqual([
      'Line 1 of what you pasted is for “Zed”, and nobody in this grid has that name: correct the name, or add the player first.',
      'Line 2 of what you pasted is for “Bo”, and more than one player here has that name: paste their marks without the names.',
    ])
  })

  it('more than there is room for is refused', () => {
    expect(paste('A\tA\nA\tA', { row: 3, column: 2 })).toEqual([
      'You pasted 2 lines and from this cell there are 1 players: begin higher up, or copy fewer lines.',
      'You pasted 2 columns and from this cell there are 1: add rounds first, or begin further left.',
    ])
  })
})
