import { type DealtPlayer, dealEvenly } from '#practice/deal-evenly'
import type { DesignRound } from '#practice/design'
import type { PracticeGrid } from '#practice/grid'
import { swapPlayers } from '#practice/grid-edit'
import type { PlayerId } from '#squad/player'
import type { PresenceLine } from '#squad/presence'
import type { ThemeId } from '#themes/theme'

/** What was different from the plan. Turns are counted from 1 through all rounds. */
export type PlanExceptions = {
  /** The practice stopped after this turn; null: it was played to the end. */
  readonly stoppedAfterTurn: number | null
  /** Two players who exchanged their places, from a turn to a turn. */
  readonly swaps: readonly {
    readonly players: readonly [PlayerId, PlayerId]
    readonly fromTurn: number
    readonly toTurn: number
  }[]
}

export const noExceptions: PlanExceptions = { stoppedAfterTurn: null, swaps: [] }

/**
 * A practice as it was planned, except. Who came late or left is in the register, and the dealing goes by it; swaps are
 * made after the dealing; what comes after the stop was not played.
 */
export function gridAsPlanned(plan: {
  readonly rounds: readonly DesignRound[]
  readonly themeId: ThemeId | null
  readonly players: readonly DealtPlayer[]
  readonly register: readonly PresenceLine[]
  readonly exceptions: PlanExceptions
}): PracticeGrid {
  const swapped = plan.exceptions.swaps.reduce(
    (grid, { players, fromTurn, toTurn }) =>
      swapPlayers(grid, { players, from: fromTurn - 1, to: toTurn - 1 }),
    dealEvenly(plan),
  )
  const count = plan.exceptions.stoppedAfterTurn ?? swapped.columns.length
  return {
    columns: swapped.columns.slice(0, count),
    rows: swapped.rows.map((row) => ({ ...row, marks: row.marks.slice(0, count) })),
  }
}
