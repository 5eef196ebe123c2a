'use client'

import { useState } from 'react'
import type { CellPlace } from '#practice/grid'

type Chosen<Of> = { readonly of: Of; readonly first: CellPlace; readonly second: CellPlace | null }

/**
 * Two places of one column, tapped one after the other; a tap on the first lets go. `of` is what the grid is of: in
 * another one the same places are others, and nothing is chosen.
 */
export function useChosenPlaces<Of>(of: Of, isSame: (one: Of, other: Of) => boolean = Object.is) {
  const [state, setChosen] = useState<Chosen<Of> | null>(null)
  const chosen = state && isSame(state.of, of) ? state : null
  const tap = (place: CellPlace) => {
    const isSameColumn = chosen?.first.column === place.column
    if (chosen && isSameColumn && chosen.first.row === place.row) setChosen(null)
    else if (chosen && isSameColumn) setChosen({ ...chosen, second: place })
    else setChosen({ of, first: place, second: null })
  }
  return { chosen, tap, close: () => setChosen(null) }
}
