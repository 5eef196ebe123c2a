import type { ReactNode } from 'react'
import { Table } from '#ui/page/table'

/** `met` was played, `hole` was due or there and not played, `unknown` was not written down, `none` is nothing to show. */
export type GridMark = 'met' | 'hole' | 'unknown' | 'none'

export type GridCell = {
  readonly key: string
  readonly mark: GridMark
  /** Short, inside the cell: minutes or turns. */
  readonly text: string
  /** The cell in words. */
  readonly words: string
}

export type GridRow = {
  readonly key: string
  readonly label: ReactNode
  /** Steps in from the margin: a theme under a theme. */
  readonly depth?: number
  readonly cells: readonly GridCell[]
}

type ThemeGridProps = {
  readonly caption: string
  /** What the rows are: "Theme", "Player". */
  readonly rowHead: string
  readonly columns: readonly { readonly key: string; readonly label: string }[]
  readonly rows: readonly GridRow[]
}

const look: Readonly<Record<GridMark, string>> = {
  met: 'bg-band font-medium',
  hole: 'border-2 border-accent text-accent',
  unknown: 'border border-dashed border-rule-strong text-soft',
  none: 'text-soft',
}

const sign: Readonly<Record<GridMark, string>> = { met: '', hole: '○', unknown: '?', none: '·' }

/** Themes by weeks, or players by themes: holes stand out by shape. */
export function ThemeGrid({ caption, rowHead, columns, rows }: ThemeGridProps) {
  return (
    <div className="grid-marks">
      <Table
        caption={caption}
        head={[{ key: 'head', label: rowHead }, ...columns.map(({ key, label }) => ({ key, label }))]}
      >
        {rows.map((row) => (
          <tr key={row.key}>
            <th scope="row">
              <span
                className="block min-w-24 sm:min-w-44"
                style={{ paddingLeft: `${(row.depth ?? 0) * 1.25}rem` }}
              >
                {row.label}
              </span>
            </th>
            {row.cells.map((cell) => (
              <td key={cell.key} title={cell.words}>
                <span
                  className={`flex min-h-7 min-w-9 items-center justify-center whitespace-nowrap px-1 text-sm ${look[cell.mark]}`}
                >
                  <span aria-hidden="true">{cell.text || sign[cell.mark]}</span>
                  <span className="sr-only">{cell.words}</span>
                </span>
              </td>
            ))}
          </tr>
        ))}
      </Table>
    </div>
  )
}
