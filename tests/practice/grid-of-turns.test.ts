import { describe, expect, it } from 'vitest'
import { changesOfGrid } from '#practice/grid-changes'
import { changeColumn, removeColumn, setMark, splitColumn } from '#practice/grid-edit'
import { gridOfTurns } from '#practice/grid-of-turns'
import { turnsOfGrid } from '#practice/grid-turns'
import { aGrid, aRegister } from '../support/grid-builder'

const typed = aGrid('a A1 A A\nb A2 D .\nc D1 A D\nd D2 K .\ne K . D', [
  { turnCount: 2, gapSeconds: 10 },
  { chosenBy: 'attack', themeId: 'press' },
  { turnSeconds: 600, isFreeGame: true },
])
const register = aRegister(typed)
const first = turnsOfGrid(typed, register)
const turns = first.ok ? first.value.turns : []
const playerIds = typed.rows.map((row) => row.playerId)
const opened = gridOfTurns(
  turns.map((turn, index) => ({ eventId: `e${index + 1}`, turn })),
  playerIds,
)

describe('written turns opened again', () => {
  it('written again unchanged they are the same turns', () => {
    expect(turns).toHaveLength(5)
    const again = turnsOfGrid(opened, register)
    const plain = (list: typeof turns) =>
      list.map((turn) => ({
        ...turn,
        continuesWait: turn.continuesWait ?? false,
        continuesTurn: turn.continuesTurn ?? false,
        chosenBy: turn.chosenBy ?? null,
      }))
    expect(again.ok && plain(again.value.turns)).toEqual(plain(turns))
  })

  it('parts of one turn stay parts of it, and a part opened into several turns begins with one', () => {
    const [whole] = turns
    if (!whole) throw new Error('There are turns.')
    const middle = whole.start + 20
    const parts = [
      { ...whole, end: middle },
      { ...whole, start: middle, continuesTurn: true },
    ]
    const grid = gridOfTurns(
      parts.map((turn, index) => ({ eventId: `p${index + 1}`, turn })),
      playerIds,
    )
    const again = turnsOfGrid(grid, register)
    expect(
      again.ok && again.value.turns.map(({ start, end, continuesTurn }) => [start, end, continuesTurn]),
    ).toEqual([
      [whole.start, middle, false],
      [middle, whole.end, true],
    ])
    const split = splitColumn(changeColumn(grid, 1, { turnCount: 2, turnSeconds: 10 }), 1)
    const three = turnsOfGrid(split, register)
    expect(three.ok && three.value.turns.map(({ continuesTurn }) => continuesTurn)).toEqual([
      false,
      true,
      false,
    ])
  })

  it('nothing changed is nothing to correct, a wait written out included', () => {
    expect(changesOfGrid(opened, opened)).toEqual({ voids: [], columns: [] })
    expect(changesOfGrid(opened, setMark(opened, { row: 4, column: 2 }, 'W'))).toEqual({
      voids: [],
      columns: [],
    })
  })

  it('a turn that changed is voided and written anew, the others stand', () => {
    expect(changesOfGrid(opened, setMark(opened, { row: 0, column: 2 }, 'D'))).toEqual({
      voids: ['e3'],
      columns: [2],
    })
    expect(changesOfGrid(opened, changeColumn(opened, 1, { turnSeconds: 50 }))).toEqual({
      voids: ['e2'],
      columns: [1],
    })
  })

  it('a turn taken out is voided, a new one is written', () => {
    expect(changesOfGrid(opened, removeColumn(opened, 0))).toEqual({ voids: ['e1'], columns: [] })
    const more = {
      ...opened,
      columns: [...opened.columns, { ...opened.columns[0], id: 'new', startsAt: null }],
    } as typeof opened
    expect(changesOfGrid(opened, more)).toEqual({ voids: [], columns: [5] })
  })
})
