import type { Seconds } from '#common/time'
import type { Station } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** Where in a turn somebody sits: station and place in its list from 0. */
export type SeatPlace = { readonly station: number; readonly role: keyof Station; readonly place: number }

/** What can be wrong with the turns of a practice; `turn` is a place in its list, from 0. */
export type PracticeFault =
  | { readonly rule: 'turnWithoutLength'; readonly turn: number }
  | { readonly rule: 'turnOutOfOrder'; readonly turn: number; readonly lastEnd: Seconds }
  | { readonly rule: 'turnAfterEnd'; readonly turn: number; readonly lengthSeconds: Seconds }
  | {
      readonly rule: 'seatedTwice'
      readonly turn: number
      readonly playerId: PlayerId
      readonly seat: SeatPlace
    }
  | {
      readonly rule: 'seatedWhileAway'
      readonly turn: number
      readonly playerId: PlayerId
      readonly seat: SeatPlace
    }
