import type { Seconds } from '#common/time'
import type { SeatRole } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** A player was offered a place in a practice and passed: a labelled part of its difference, never taken out of it. */
export type PassedTurn = {
  readonly sessionId: string
  readonly playerId: PlayerId
  readonly role: SeatRole
  /** The length of the turn it would have been. */
  readonly lengthSeconds: Seconds
}
