import type { Seconds } from '#common/time'
import type { Span } from '#exposure/span'
import type { PlayerId } from '#squad/player'

/**
 * A player's longest time off at a stretch, in playing time: a break inside it counts nothing and ends nothing. Who goes
 * away ends it.
 */
export function longestOffOf(
  spans: readonly Pick<Span, 'start' | 'end' | 'resting'>[],
  playerId: PlayerId,
): Seconds {
  let longest = 0
  let running = 0
  for (const { start, end, resting } of spans) {
    running = resting.includes(playerId) ? running + end - start : 0
    longest = Math.max(longest, running)
  }
  return longest
}
