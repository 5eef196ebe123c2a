import type { Seconds } from '#common/time'
import type { AreaShape } from '#practice/design'
import type { Mark } from '#practice/grid-mark'
import { practiceLimits } from '#practice/practice-size'
import type { PlayerId } from '#squad/player'
import type { ThemeId } from '#themes/theme'

/** A column of the grid: a round, or a single turn. */
export type GridColumn = {
  /** Tells columns apart while they are being edited. */
  readonly id: string
  readonly title: string
  readonly turnCount: number
  readonly turnSeconds: Seconds
  /** Nobody's time between its turns, and before the column that follows. */
  readonly gapSeconds: Seconds
  /** Seconds from the start of the practice; null: follows on from the column before. */
  readonly startsAt: Seconds | null
  /** Areas playing at the same time. A number behind a letter may ask for more. */
  readonly areas: number
  /**
   * So many at a time, taking turns in order: one shape for each area, the last for all areas beyond. Null: who is
   * marked plays in every turn.
   */
  readonly atATime: readonly AreaShape[] | null
  readonly themeId: ThemeId | null
  /** The side that got to choose. */
  readonly chosenBy: 'attack' | 'defend' | null
  /** Two equal halves with the sides swapped. */
  readonly isFreeGame: boolean
  /** Second half of a free game that was opened again for correction. */
  readonly continuesWait: boolean
  /** Goes on with the turn before it, with other places, that was opened again for correction. */
  readonly continuesTurn: boolean
}

/** A player's marks, one for each column in order. */
export type GridRow = { readonly playerId: PlayerId; readonly marks: readonly Mark[] }

/** A practice as it is typed in: plain data, so that it can be sent and kept as it is. */
export type PracticeGrid = { readonly columns: readonly GridColumn[]; readonly rows: readonly GridRow[] }

/** Where in the grid: both from 0. */
export type CellPlace = { readonly row: number; readonly column: number }

export const gridLimits = {
  columns: 300,
  rows: practiceLimits.players,
  turnCount: practiceLimits.turnCount,
  turnSeconds: practiceLimits.turnSeconds,
  gapSeconds: practiceLimits.gapSeconds,
  areas: 20,
} as const

/** The mark in a cell; empty when the row is shorter than the columns. */
export function markAt(grid: PracticeGrid, place: CellPlace): Mark {
  return grid.rows[place.row]?.marks[place.column] ?? ''
}
