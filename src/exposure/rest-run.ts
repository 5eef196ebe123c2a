import type { Span } from '#exposure/span'
import { wholeTurns } from '#exposure/whole-turns'
import type { PlayerId } from '#squad/player'

/** How a run of waits is counted: both halves of a free game as one wait, or each turn by itself. */
export type WaitCount = { readonly freeGameIsOneWait: boolean }

/**
 * Longest run of consecutive turns of one practice that a player was present for and rested in.
 * A turn it was away for ends the run, and so does one it had a place in for a part. 0 for whoever never waited.
 */
export function longestRestRun(spans: readonly Span[], playerId: PlayerId, count: WaitCount): number {
  let longest = 0
  let run = 0
  for (const whole of wholeTurns(spans)) {
    const there = whole.filter((span) => span.present.includes(playerId))
    if (there.length === 0 || !there.every((span) => span.resting.includes(playerId))) {
      run = 0
    } else if (!(count.freeGameIsOneWait && whole[0].continuesWait && run > 0)) {
      run += 1
    }
    longest = Math.max(longest, run)
  }
  return longest
}
