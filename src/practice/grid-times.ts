import type { Interval, Seconds } from '#common/time'
import type { GridColumn } from '#practice/grid'

/** When a column plays: each of its turns, and where the column after it begins. */
export type ColumnTimes = { readonly turns: readonly Interval[]; readonly end: Seconds }

/** The turns of every column, one column after the other unless a column says when it starts. */
export function timesOfColumns(columns: readonly GridColumn[]): readonly ColumnTimes[] {
  let next = 0
  return columns.map((column) => {
    const start = column.startsAt ?? next
    const step = column.turnSeconds + column.gapSeconds
    const turns = Array.from({ length: column.turnCount }, (_, turn) => ({
      from: start + turn * step,
      to: start + turn * step + column.turnSeconds,
    }))
    next = start + column.turnCount * step
    return { turns, end: next }
  })
}

/** The end of the last turn; 0 when there are no columns. */
export function endOfColumns(columns: readonly GridColumn[]): Seconds {
  return Math.max(0, ...timesOfColumns(columns).flatMap(({ turns }) => turns.map((turn) => turn.to)))
}
