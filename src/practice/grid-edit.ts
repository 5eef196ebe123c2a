import { type CellPlace, type GridColumn, markAt, type PracticeGrid } from '#practice/grid'
import { type Mark, swapSides } from '#practice/grid-mark'
import type { PlayerId } from '#squad/player'

/** The grid with one mark changed; a place outside it changes nothing. */
export function setMark(grid: PracticeGrid, place: CellPlace, mark: Mark): PracticeGrid {
  if (place.column < 0 || place.column >= grid.columns.length) return grid
  return {
    ...grid,
    rows: grid.rows.map((row, index) =>
      index === place.row
        ? { ...row, marks: grid.columns.map((_, c) => (c === place.column ? mark : (row.marks[c] ?? ''))) }
        : row,
    ),
  }
}

/** A column's marks taken from the column before it, with attack and defence exchanged when asked. */
export function copyColumnBefore(
  grid: PracticeGrid,
  at: { readonly column: number; readonly swap: boolean },
): PracticeGrid {
  if (at.column < 1 || at.column >= grid.columns.length) return grid
  return grid.rows.reduce((copied, _, row) => {
    const before = markAt(grid, { row, column: at.column - 1 })
    const kept = before.startsWith('p') ? '' : before
    return setMark(copied, { row, column: at.column }, at.swap ? swapSides(before) : kept)
  }, grid)
}

/** A column put in at an index, with empty marks. */
export function insertColumn(grid: PracticeGrid, at: number, column: GridColumn): PracticeGrid {
  return {
    columns: grid.columns.toSpliced(at, 0, column),
    rows: grid.rows.map((row) => ({
      ...row,
      marks: filled(row.marks, grid.columns.length).toSpliced(at, 0, ''),
    })),
  }
}

export function removeColumn(grid: PracticeGrid, at: number): PracticeGrid {
  return {
    columns: grid.columns.toSpliced(at, 1),
    rows: grid.rows.map((row) => ({
      ...row,
      marks: filled(row.marks, grid.columns.length).toSpliced(at, 1),
    })),
  }
}

export function changeColumn(
  grid: PracticeGrid,
  at: number,
  change: Partial<Omit<GridColumn, 'id'>>,
): PracticeGrid {
  return {
    ...grid,
    columns: grid.columns.map((column, index) => (index === at ? { ...column, ...change } : column)),
  }
}

/**
 * A round opened into its single turns, each with the round's marks, so that one turn can differ. A free game stays
 * whole. Seconds and turns are the same before and after.
 */
export function splitColumn(grid: PracticeGrid, at: number): PracticeGrid {
  const column = grid.columns[at]
  if (!column || column.turnCount < 2 || column.isFreeGame || column.atATime) return grid
  const turns = Array.from({ length: column.turnCount }, (_, turn) => ({
    ...column,
    id: `${column.id}.${turn + 1}`,
    turnCount: 1,
    startsAt: turn === 0 ? column.startsAt : null,
    continuesTurn: turn === 0 && column.continuesTurn,
  }))
  return {
    columns: grid.columns.toSpliced(at, 1, ...turns),
    rows: grid.rows.map((row) => {
      const mark = row.marks[at] ?? ''
      return {
        ...row,
        marks: filled(row.marks, grid.columns.length).toSpliced(at, 1, ...turns.map(() => mark)),
      }
    }),
  }
}

/** Two players exchange their marks in the columns from `from` to `to`, both included. */
export function swapPlayers(
  grid: PracticeGrid,
  swap: { readonly players: readonly [PlayerId, PlayerId]; readonly from: number; readonly to: number },
): PracticeGrid {
  const [first, second] = swap.players.map((id) => grid.rows.findIndex((row) => row.playerId === id))
  if (first === undefined || second === undefined || first < 0 || second < 0 || first === second) return grid
  return grid.columns.reduce((swapped, _, column) => {
    if (column < swap.from || column > swap.to) return swapped
    const given = setMark(swapped, { row: first, column }, markAt(grid, { row: second, column }))
    return setMark(given, { row: second, column }, markAt(grid, { row: first, column }))
  }, grid)
}

/** A row for one more player, at the end; a player who has a row keeps it. */
export function addRow(grid: PracticeGrid, playerId: PlayerId): PracticeGrid {
  if (grid.rows.some((row) => row.playerId === playerId)) return grid
  return { ...grid, rows: [...grid.rows, { playerId, marks: grid.columns.map(() => '') }] }
}

function filled(marks: readonly Mark[], length: number): Mark[] {
  return Array.from({ length }, (_, index) => marks[index] ?? '')
}
