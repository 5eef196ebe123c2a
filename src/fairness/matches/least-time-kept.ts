/** In how many matches everyone had the least part of the time they were there for. */
export type LeastTimeKept = {
  /** The part everyone is promised, 0 to 1. */
  readonly share: number
  readonly matches: number
  readonly matchesBelow: number
  /** Times that a player had less. */
  readonly timesBelow: number
  /** Of them, by who was there throughout and had agreed to nothing else. */
  readonly timesThroughout: number
}
