import type { Interval } from '#common/time'
import type { GridColumn, PracticeGrid } from '#practice/grid'
import { timesOfColumns } from '#practice/grid-times'
import { isPresentThroughout, joinPresence } from '#squad/joined-presence'
import type { PlayerId } from '#squad/player'
import type { PresenceLine } from '#squad/presence'

/** Who is there for at least one turn of each column, one set a column. */
export function thereByColumn(
  grid: PracticeGrid,
  register: readonly PresenceLine[],
): readonly ReadonlySet<PlayerId>[] {
  const presence = joinPresence(register)
  const times = timesOfColumns(grid.columns)
  return grid.columns.map((column, index) => {
    const parts = (times[index]?.turns ?? []).flatMap((turn) => partsOf(column, turn))
    const ids = grid.rows.map(({ playerId }) => playerId)
    return new Set(ids.filter((id) => parts.some((part) => isPresentThroughout(presence, id, part))))
  })
}

/** The grid without the marks of players in columns that they are not there for. */
export function clearAbsent(grid: PracticeGrid, register: readonly PresenceLine[]): PracticeGrid {
  const there = thereByColumn(grid, register)
  return {
    ...grid,
    rows: grid.rows.map(({ playerId, marks }) => ({
      playerId,
      marks: grid.columns.map((_, column) => (there[column]?.has(playerId) ? (marks[column] ?? '') : '')),
    })),
  }
}

/** The stretches of a column that somebody can play one of: its turns, or the halves of a free game. */
export function partsOf(
  { isFreeGame }: Pick<GridColumn, 'isFreeGame'>,
  { from, to }: Interval,
): readonly Interval[] {
  if (!isFreeGame) return [{ from, to }]
  const middle = (from + to) / 2
  return [
    { from, to: middle },
    { from: middle, to },
  ]
}
