import type { Day, Seconds } from '#common/time'
import type { PlayerId } from '#squad/player'
import type { PresenceLine } from '#squad/presence'

export const lines = ['keeper', 'back', 'middle', 'forward'] as const
export type Line = (typeof lines)[number]

/** Half-open, in seconds from kick-off, breaks included. */
export type Period = { readonly start: Seconds; readonly end: Seconds }

/** A player's unbroken time in one line, inside one period. */
export type Spell = {
  readonly playerId: PlayerId
  readonly line: Line
  readonly start: Seconds
  readonly end: Seconds
}

export type Match = {
  readonly id: string
  readonly day: Day
  readonly periods: readonly Period[]
  readonly register: readonly PresenceLine[]
  readonly spells: readonly Spell[]
}
