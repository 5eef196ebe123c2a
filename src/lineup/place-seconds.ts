import type { Seconds } from '#common/time'
import { type LineUpWindow, windowSeconds } from '#lineup/problem'
import { placesInAll } from '#match/format/places-in-all'
import type { Line } from '#match/match'

/** Time to be shared out among those who are on, or in one line alone. */
export function placeSeconds(windows: readonly LineUpWindow[], line?: Line): Seconds {
  return windows.reduce((sum, window) => {
    const places = line ? window.places[line] : placesInAll(window.places)
    return sum + places * windowSeconds(window)
  }, 0)
}
