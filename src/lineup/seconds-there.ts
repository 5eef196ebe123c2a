import type { Seconds } from '#common/time'
import { type LineUpPlayer, type LineUpWindow, windowSeconds } from '#lineup/problem'

/** How long a player is there of some windows. */
export function secondsThere(
  { isThere }: Pick<LineUpPlayer, 'isThere'>,
  windows: readonly LineUpWindow[],
): Seconds {
  return windows.reduce((sum, window, index) => (isThere[index] ? sum + windowSeconds(window) : sum), 0)
}
