import type { PracticeGrid } from '#practice/grid'

/** What a correction comes to: events to void, and the columns (from 0, of the grid as it is now) to write anew. */
export type GridChanges = { readonly voids: readonly string[]; readonly columns: readonly number[] }

/**
 * Holds a grid that was opened from written turns against what became of it. A column that is as it was stands; one
 * that changed is voided and written anew; one that was taken out is voided; one that is new is written.
 */
export function changesOfGrid(before: PracticeGrid, after: PracticeGrid): GridChanges {
  const wasAt = new Map(before.columns.map((column, index) => [column.id, index]))
  const stands = after.columns.map(({ id }, index) => {
    const was = wasAt.get(id)
    return was !== undefined && contentsOf(before, was) === contentsOf(after, index)
  })
  const standing = new Set(after.columns.filter((_, index) => stands[index]).map((column) => column.id))
  return {
    voids: before.columns.map((column) => column.id).filter((id) => !standing.has(id)),
    columns: after.columns.flatMap((_, index) => (stands[index] ? [] : [index])),
  }
}

/** A column's settings and who has which place in it, as one text; an empty mark and a written wait are the same. */
function contentsOf(grid: PracticeGrid, at: number): string {
  const marks = grid.rows
    .map((row) => [row.playerId, row.marks[at] ?? ''])
    .filter(([, mark]) => mark !== '' && mark !== 'W')
    .sort(([one = ''], [other = '']) => (one < other ? -1 : 1))
  const { id: _, ...settings } = grid.columns[at] ?? { id: '' }
  const ordered = Object.entries(settings).sort(([one], [other]) => (one < other ? -1 : 1))
  return JSON.stringify([ordered, marks])
}
