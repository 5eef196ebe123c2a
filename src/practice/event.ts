import type { Seconds } from '#common/time'
import type { SeatRole, Turn } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** What is written of a practice, in the order it was written. Never changed: a correction voids and writes anew. */
export type PracticeEvent =
  | { readonly kind: 'turn'; readonly id: string; readonly turn: Turn }
  | { readonly kind: 'void'; readonly id: string; readonly voids: string }
  /** A player was offered a place and passed; the length of the turn it would have been. */
  | {
      readonly kind: 'passed'
      readonly id: string
      readonly playerId: PlayerId
      readonly role: SeatRole
      readonly lengthSeconds: Seconds
    }
