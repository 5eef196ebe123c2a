import type { Seconds } from '#common/time'
import type { LineUpFault } from '#lineup/rule'
import type { Line } from '#match/match'

/** From the first window to the last, both included. */
type Windows = { readonly first: number; readonly last: number }

/** Why no line-up can be. Players and windows are places in the lists, pairs places in their own list. */
export type LineUpClash =
  | ({ readonly kind: 'places'; readonly asked: number; readonly there: number } & Windows)
  | ({ readonly kind: 'keepers'; readonly asked: number; readonly able: number } & Windows)
  | ({ readonly kind: 'lines' } & Windows)
  /** A window that is longer than anybody may be on, or off, at a stretch. */
  | ({ readonly kind: 'longestSpell' | 'longestOff'; readonly longest: Seconds } & Windows)
  | { readonly kind: 'spells'; readonly least: Seconds; readonly longest: Seconds }
  | {
      readonly kind: 'keeperPeriods'
      readonly asked: number
      readonly able: number
      readonly most: number
    }
  /** All limits on time together leave places empty. */
  | { readonly kind: 'mostSeconds'; readonly asked: Seconds; readonly allowed: Seconds }
  | {
      readonly kind: 'leastAboveMost'
      readonly player: number
      readonly least: Seconds
      readonly most: Seconds
    }
  | {
      readonly kind: 'leastAboveThere'
      readonly player: number
      readonly least: Seconds
      readonly there: Seconds
    }
  /** One held place that cannot be. */
  | {
      readonly kind: 'held'
      readonly player: number
      readonly window: number
      readonly why: 'absent' | 'keeper' | 'notYet' | 'twice' | 'comesBack'
    }
  /** More are held in a line, on or off than there is room for. */
  | {
      readonly kind: 'heldTooMany'
      readonly window: number
      readonly place: Line | 'on' | 'off'
      readonly players: readonly number[]
      readonly room: number
    }
  /** Held on, then off too soon. */
  | {
      readonly kind: 'tooSoon'
      readonly player: number
      readonly window: number
      readonly played: Seconds
      readonly least: Seconds
    }
  | { readonly kind: 'apartHeld'; readonly pair: number; readonly window: number }
  /** With the pairs kept apart the places cannot all be filled. */
  | { readonly kind: 'apartFills'; readonly pair: number; readonly window: number }
  | { readonly kind: 'apartTogether'; readonly apart: number; readonly together: number }
  /** None of the above: these rules together leave no line-up, as a search proved. */
  | { readonly kind: 'rules'; readonly rules: readonly LineUpFault['rule'][] }
