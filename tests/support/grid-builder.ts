import type { GridColumn, PracticeGrid } from '#practice/grid'
import { plainColumn } from '#practice/grid-columns'
import { parseMark } from '#practice/grid-mark'
import type { PresenceLine } from '#squad/presence'

export function aColumn(change: Partial<GridColumn> = {}): GridColumn {
  return { ...plainColumn(1, null), turnCount: 1, turnSeconds: 60, gapSeconds: 0, ...change }
}

/** A grid from lines such as `ann A1 D K`; columns all alike unless given. */
export function aGrid(lines: string, columns?: readonly Partial<GridColumn>[]): PracticeGrid {
  const rows = lines
    .trim()
    .split('\n')
    .map((line) => line.trim().split(/\s+/))
    .map(([playerId = '', ...texts]) => ({
      playerId,
      marks: texts.map((text) => {
        const mark = parseMark(text === '.' ? '' : text)
        if (mark === null) throw new Error(`${text} is no mark`)
        return mark
      }),
    }))
  const count = Math.max(...rows.map((row) => row.marks.length))
  return {
    rows,
    columns: Array.from({ length: count }, (_, index) =>
      aColumn({ id: `c${index + 1}`, title: `Round ${index + 1}`, ...columns?.[index] }),
    ),
  }
}

/** Everyone of a grid here for the whole of a long practice, but for what is said. */
export function aRegister(
  grid: PracticeGrid,
  but: Readonly<Record<string, readonly [number, number] | null>> = {},
): readonly PresenceLine[] {
  return grid.rows.flatMap(({ playerId }) => {
    const own = playerId in but ? but[playerId] : ([0, 100_000] as const)
    return own ? [{ playerId, from: own[0], to: own[1] }] : []
  })
}
