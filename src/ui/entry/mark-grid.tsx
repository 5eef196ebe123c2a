'use client'

import { type KeyboardEvent, type ReactNode, useRef, useState } from 'react'
import type { CellPlace } from '#practice/grid'
import type { MarkLook } from '#ui/entry/mark-look'

export type MarkGridColumn = { readonly id: string; readonly label: string; readonly head: ReactNode }

export type MarkGridRow = {
  readonly id: string
  readonly name: string
  readonly note?: string
  readonly cells: readonly { readonly look: MarkLook; readonly isThere: boolean }[]
}

type MarkGridProps = {
  readonly caption: string
  readonly columns: readonly MarkGridColumn[]
  readonly rows: readonly MarkGridRow[]
  readonly onTap: (place: CellPlace) => void
  /** A letter, digit or delete key in a cell; true when it was understood, `moves` when the next cell down is wanted after it. */
  readonly onKey: (place: CellPlace, key: string) => { readonly moves: boolean } | null
  readonly onPaste?: (place: CellPlace, text: string) => void
}

/** The id of the cell in a grid of the page, for moving the focus and for tests. */
const cellId = ({ row, column }: CellPlace) => `cell-${row}-${column}`

/**
 * Players × columns of cells that are tapped or typed into. One stop of the Tab key; arrows move inside, Enter moves
 * down, a letter moves down by itself, and at the foot of a column the next one begins.
 */
export function MarkGrid({ caption, columns, rows, onTap, onKey, onPaste }: MarkGridProps) {
  const [at, setAt] = useState<CellPlace>({ row: 0, column: 0 })
  // A letter has just moved down: an Enter typed out of habit after it must not skip a player, and a digit belongs above.
  const lastTyped = useRef<CellPlace | null>(null)
  const size = { rows: rows.length, columns: columns.length }

  const moveTo = (place: CellPlace | null) => {
    if (!place) return
    setAt(place)
    document.getElementById(cellId(place))?.focus()
  }
  const handleKey = (event: KeyboardEvent, place: CellPlace) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return
    if (event.key === 'Enter' && lastTyped.current) {
      lastTyped.current = null
      event.preventDefault()
      return
    }
    const moved = placeAfter(event.key, place, size)
    if (moved) {
      event.preventDefault()
      lastTyped.current = null
      moveTo(moved)
      return
    }
    if (event.key.length > 1 && event.key !== 'Backspace' && event.key !== 'Delete') return
    const target = /^\d$/.test(event.key) ? (lastTyped.current ?? place) : place
    const understood = onKey(target, event.key)
    if (!understood) return
    event.preventDefault()
    if (!understood.moves) return
    lastTyped.current = place
    moveTo(placeAfter('Enter', place, size))
  }
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
    <section className="overflow-x-auto" tabIndex={0} aria-label={caption}>
      <table className="border-separate border-spacing-0">
        <caption className="sr-only">{caption}</caption>
        <thead>
          <tr>
            <th
              scope="col"
              className="sticky left-0 z-[1] bg-leaf pr-2 text-left align-bottom text-sm font-medium text-soft"
            >
              Player
            </th>
            {columns.map(({ id, head }) => (
              <th key={id} scope="col" className="min-w-14 px-0.5 align-bottom font-normal">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, rowIndex) => (
            <tr key={row.id}>
              <th
                scope="row"
                className="sticky left-0 z-[1] w-24 min-w-24 bg-leaf py-0.5 pr-2 text-left text-sm font-medium sm:w-44 sm:min-w-44"
              >
                <span className="line-clamp-2 leading-tight">{row.name}</span>
                {row.note ? (
                  <span className="block truncate text-xs font-normal text-soft">{row.note}</span>
                ) : null}
              </th>
              {columns.map(({ id, label }, column) => {
                const cell = row.cells[column]
                const place = { row: rowIndex, column }
                return (
                  <td key={id} className="p-0.5">
                    <button
                      type="button"
                      id={cellId(place)}
                      tabIndex={at.row === rowIndex && at.column === column ? 0 : -1}
                      aria-label={`${row.name}, ${label}: ${cell?.isThere ? cell.look.word : 'not there'}`}
                      aria-disabled={cell?.isThere ? undefined : true}
                      onFocus={() => setAt(place)}
                      onClick={() => cell?.isThere && onTap(place)}
                      onKeyDown={(event) => handleKey(event, place)}
                      onPaste={(event) => {
                        event.preventDefault()
                        onPaste?.(place, event.clipboardData.getData('text'))
                      }}
                      className={`block h-11 w-full scroll-mb-36 scroll-ml-28 scroll-mt-4 cursor-pointer border border-rule-strong text-center select-none ${cell?.isThere ? `bg-leaf ${cell.look.look}` : 'cursor-default bg-band text-soft'}`}
                    >
                      {cell?.isThere ? cell.look.text : '–'}
                    </button>
                  </td>
                )
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

/** Where a key leads from a cell; null for keys that lead nowhere. Down from the last row goes to the top of the next column. */
export function placeAfter(
  key: string,
  { row, column }: CellPlace,
  size: { readonly rows: number; readonly columns: number },
): CellPlace | null {
  switch (key) {
    case 'ArrowUp':
      return { row: Math.max(0, row - 1), column }
    case 'ArrowDown':
      return { row: Math.min(size.rows - 1, row + 1), column }
    case 'ArrowLeft':
      return { row, column: Math.max(0, column - 1) }
    case 'ArrowRight':
      return { row, column: Math.min(size.columns - 1, column + 1) }
    case 'Home':
      return { row: 0, column }
    case 'End':
      return { row: size.rows - 1, column }
    case 'Enter':
      if (row + 1 < size.rows) return { row: row + 1, column }
      return column + 1 < size.columns ? { row: 0, column: column + 1 } : { row, column }
    default:
      return null
  }
}
