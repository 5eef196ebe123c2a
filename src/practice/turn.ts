import type { Seconds } from '#common/time'
import type { PlayerId } from '#squad/player'
import type { ThemeId } from '#themes/theme'

export const seatRoles = ['attack', 'defend', 'keep'] as const
export type SeatRole = (typeof seatRoles)[number]

/** One of the identical areas that play at the same time; each list holds the players with a seat there. */
export type Station = Readonly<Record<SeatRole, readonly PlayerId[]>>

/** One ball or one short game, half-open in seconds from the start of the practice. */
export type Turn = {
  readonly start: Seconds
  readonly end: Seconds
  readonly themeId: ThemeId | null
  /** Empty: all who are present rest. */
  readonly stations: readonly Station[]
  /** Title of the round it belongs to. */
  readonly round?: string | null
  /** Second half of a free game: whoever waited in the first half waits once, not twice. */
  readonly continuesWait?: boolean
  /** The same ball with other places, after a change during it: one turn and one wait together with the turn before it. */
  readonly continuesTurn?: boolean
  /** The side that was given the choice of size in a choice turn. */
  readonly chosenBy?: 'attack' | 'defend' | null
}
