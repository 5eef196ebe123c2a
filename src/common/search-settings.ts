/** How long and how a plan may be searched for. */
export type SearchSettings = {
  readonly seed: number
  readonly timeLimitMs: number
  /** In units of the search's own, the same on every machine; null: only the clock counts. */
  readonly workLimit: number | null
}
