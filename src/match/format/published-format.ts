import type { FormatSource, LeastTime, MatchFormat } from '#match/format/match-format'

/** A format that a club can take over. Ours have no source: they are common practice, to begin with. */
export type PublishedFormat = { readonly key: string; readonly format: MatchFormat }

/** A rule of least time as a body publishes it, to be put into a format. */
export type PublishedLeastTime = {
  readonly key: string
  readonly source: FormatSource
  /** The rule, as it is to be read. */
  readonly words: string
  /** It speaks of so many periods; null: of any match. */
  readonly periods: number | null
  readonly leastTime: LeastTime
  readonly mostKeeperPeriods: number | null
}

export type PublishedFormats = {
  readonly formats: readonly PublishedFormat[]
  readonly leastTimes: readonly PublishedLeastTime[]
}
