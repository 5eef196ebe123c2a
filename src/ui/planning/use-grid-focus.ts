'use client'

import { type KeyboardEvent, useState } from 'react'
import type { CellPlace } from '#practice/grid'
import { placeAfter } from '#ui/entry/mark-grid'

/** One cell of a grid can be reached by Tab, the others from it by the arrow keys. */
export function useGridFocus(
  size: { readonly rows: number; readonly columns: number },
  cellId: (place: CellPlace) => string,
) {
  const [at, setAt] = useState<CellPlace>({ row: 0, column: 0 })
  const handleKey = (event: KeyboardEvent, place: CellPlace) => {
    if (event.key === 'Enter') return
    const next = placeAfter(event.key, place, size)
    if (!next) return
    event.preventDefault()
    setAt(next)
    document.getElementById(cellId(next))?.focus()
  }
  return (place: CellPlace) => ({
    id: cellId(place),
    tabIndex: at.row === place.row && at.column === place.column ? 0 : -1,
    onFocus: () => setAt(place),
    onKey: (event: KeyboardEvent) => handleKey(event, place),
  })
}
