import type { Seconds } from '#common/time'
import type { EpochMs } from '#pitch/pitch-event'

/** A period as it was played. */
export type PlayedPeriod = {
  /** From 0. */
  readonly period: number
  readonly startedAt: EpochMs
  /** Null: it runs. */
  readonly endedAt: EpochMs | null
  /** Nobody tapped the whistle: it is taken to have ended at its planned length, or at what was tapped next. */
  readonly isEndAssumed: boolean
  /** While the clock stood; `to` null: it stands. */
  readonly stops: readonly { readonly from: EpochMs; readonly to: EpochMs | null }[]
  /** Playing time before it, as it was. */
  readonly start: Seconds
  /** As it was; null: it runs. */
  readonly length: Seconds | null
  readonly planned: Seconds
  readonly isExtra: boolean
}

type Running = Pick<PlayedPeriod, 'startedAt' | 'stops'>

/** Milliseconds of play from a period's kick-off to a moment; a clock that stands counts nothing. */
export function playedMs({ startedAt, stops }: Running, at: EpochMs): number {
  const stood = stops.reduce(
    (sum, { from, to }) => sum + Math.max(0, Math.min(to ?? at, at) - Math.min(from, at)),
    0,
  )
  return Math.max(0, at - startedAt - stood)
}

/** The moment at which so much of a period had been played. */
export function momentOfSecond({ startedAt, stops }: Running, second: Seconds): EpochMs {
  return stops.reduce(
    (at, { from, to }) => (to !== null && from < at ? at + to - from : at),
    startedAt + second * 1000,
  )
}

/** The second of a period at a moment: whole seconds, never beyond its end. */
export function secondOfPeriod(period: PlayedPeriod, at: EpochMs): Seconds {
  const second = Math.floor(playedMs(period, at) / 1000)
  return period.length === null ? second : Math.min(second, period.length)
}

type Played = { readonly periods: readonly PlayedPeriod[] }

/** The period that was running at a moment, its kick-off included and its whistle not; null: none. */
export function periodRunningAt({ periods }: Played, at: EpochMs): PlayedPeriod | null {
  return (
    periods.find(({ startedAt, endedAt }) => startedAt <= at && (endedAt === null || at < endedAt)) ?? null
  )
}

/** Playing time at a moment: breaks and a clock that stood left out. */
export function playingSecondAt({ periods }: Played, at: EpochMs): Seconds {
  const period = periods.findLast(({ startedAt }) => startedAt <= at)
  return period ? period.start + secondOfPeriod(period, at) : 0
}

/**
 * The book's second at a moment: from the first kick-off, breaks included. The time for which a clock stood is left out,
 * so that a period is as long in the book as was played of it.
 */
export function bookSecondAt(times: Played, at: EpochMs): Seconds {
  const period = times.periods.findLast(({ startedAt }) => startedAt <= at)
  if (!period) return 0
  const sinceEnd = period.endedAt === null ? 0 : Math.max(0, Math.floor((at - period.endedAt) / 1000))
  return bookStartOf(times, period) + secondOfPeriod(period, at) + sinceEnd
}

/** Where a period begins in the book. */
export function bookStartOf({ periods }: Played, period: PlayedPeriod): Seconds {
  let breaks = 0
  for (const [index, own] of periods.entries()) {
    if (own === period) break
    const next = periods[index + 1]
    if (next && own.endedAt !== null) breaks += Math.max(0, Math.floor((next.startedAt - own.endedAt) / 1000))
  }
  return period.start + breaks
}
