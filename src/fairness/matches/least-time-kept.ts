import { belowPromise } from '#fairness/matches/below-promise'
import type { MatchFigures } from '#fairness/matches/match-figure'

/** In how many matches everyone had what everyone is promised. */
export type LeastTimeKept = {
  readonly matches: number
  readonly matchesBelow: number
  /** Times that a player had less. */
  readonly timesBelow: number
  /** Of them, by who was there throughout and had agreed to nothing else. */
  readonly timesThroughout: number
}

export function leastTimeKept(matches: readonly MatchFigures[]): LeastTimeKept {
  const below = belowPromise(matches)
  return {
    matches: matches.length,
    matchesBelow: new Set(below.map(({ sessionId }) => sessionId)).size,
    timesBelow: below.length,
    timesThroughout: below.filter(({ reason }) => reason === null).length,
  }
}
