import type { Seconds } from '#common/time'
import { type ClockWait, clockWaits, longestWait } from '#pitch/clock-waits'
import { presenceOfPlayers } from '#pitch/pitch-presence'
import type { PitchState } from '#pitch/pitch-state'
import { turnsUpTo } from '#pitch/running-totals'
import { joinPresence } from '#squad/joined-presence'

/** The longest wait of all by the clock up to a second of the practice, one that still goes on included; null: nobody waited. */
export function longestWaitUpTo(state: PitchState, second: Seconds): ClockWait | null {
  const presence = presenceOfPlayers(state.players, Number.POSITIVE_INFINITY)
  return longestWait(clockWaits(turnsUpTo(state, second), joinPresence(presence), second))
}
