import type { Seconds } from '#common/time'
import type { LineMark } from '#match/line-mark'
import type { Period } from '#match/match'
import type { PlayerId } from '#squad/player'

/** Time of a match between two changes, inside one period. */
export type LineSpan = { readonly start: Seconds; readonly end: Seconds; readonly periodIndex: number }

/** A match as it is typed in: players × spans. `changes` cut the periods; what lies on an edge or outside cuts nothing. */
export type LineGrid = {
  readonly periods: readonly Period[]
  /** Seconds from kick-off, in any order. */
  readonly changes: readonly Seconds[]
  /** A player's marks, one for each span in order. */
  readonly rows: readonly { readonly playerId: PlayerId; readonly marks: readonly LineMark[] }[]
}

export const lineGridLimits = { periods: 8, changes: 60, rows: 60, seconds: 4 * 3600 } as const

/** The spans of a grid, in order of time. */
export function spansOfGrid({
  periods,
  changes,
}: Pick<LineGrid, 'periods' | 'changes'>): readonly LineSpan[] {
  return periods.flatMap((period, periodIndex) => {
    const inside = [...new Set(changes)].filter((at) => period.start < at && at < period.end)
    const edges = [period.start, ...inside.toSorted((one, other) => one - other), period.end]
    return edges.slice(1).map((end, index) => ({ start: edges[index] ?? period.start, end, periodIndex }))
  })
}

/** The grid with a change at a second: the span it falls in is cut, and both parts keep its marks. */
export function addChange(grid: LineGrid, at: Seconds): LineGrid {
  const cut = spansOfGrid(grid).findIndex((span) => span.start < at && at < span.end)
  if (cut < 0) return grid
  return {
    ...grid,
    changes: [...grid.changes, at],
    rows: grid.rows.map((row) => ({ ...row, marks: row.marks.toSpliced(cut + 1, 0, row.marks[cut] ?? '') })),
  }
}

/** The grid without the change that a span begins with; the span before it goes on. Kick-offs cannot be taken out. */
export function removeChange(grid: LineGrid, spanIndex: number): LineGrid {
  const span = spansOfGrid(grid)[spanIndex]
  if (!span || !grid.changes.includes(span.start)) return grid
  return {
    ...grid,
    changes: grid.changes.filter((at) => at !== span.start),
    rows: grid.rows.map((row) => ({ ...row, marks: row.marks.toSpliced(spanIndex, 1) })),
  }
}

export function setLine(
  grid: LineGrid,
  place: { readonly row: number; readonly span: number },
  mark: LineMark,
): LineGrid {
  const count = spansOfGrid(grid).length
  return {
    ...grid,
    rows: grid.rows.map((row, index) =>
      index === place.row
        ? {
            ...row,
            marks: Array.from({ length: count }, (_, span) =>
              span === place.span ? mark : (row.marks[span] ?? ''),
            ),
          }
        : row,
    ),
  }
}

/** A span's marks taken from the span before it. */
export function copySpanBefore(grid: LineGrid, span: number): LineGrid {
  return grid.rows.reduce(
    (copied, row, index) =>
      span < 1 ? copied : setLine(copied, { row: index, span }, row.marks[span - 1] ?? ''),
    grid,
  )
}
