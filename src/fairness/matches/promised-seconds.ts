import type { Interval, Seconds } from '#common/time'
import { leastSecondsOf } from '#match/format/least-seconds'
import type { LeastTime } from '#match/format/match-format'
import type { Period } from '#match/match'

/** What everyone is promised of each match. */
export type MatchPromise = {
  /** Of the squad's format; null: it plays none. */
  readonly leastTime: LeastTime | null
  /** The club's own least part of the time for which a player is there. */
  readonly policyShare: number
}

const nothingOfTheFormat: LeastTime = { share: null, periods: null, late: [], wherePossible: false }

/** What a player was promised of a match that was played, by when the register had it there. */
export function promisedSeconds(
  { leastTime, policyShare }: MatchPromise,
  of: { readonly periods: readonly Period[]; readonly presence: readonly Interval[] },
): Seconds {
  const there = of.presence.flatMap(({ from, to }) =>
    of.periods.map((period) => overlap(period, { start: from, end: to })),
  )
  const seconds = there.reduce((sum, own) => sum + own, 0)
  const came = of.presence.length > 0 ? Math.min(...of.presence.map((line) => line.from)) : 0
  // Playing time before it came, breaks left out. Who went away in between is promised of the time for which it was there.
  const from = of.periods.reduce((sum, period) => sum + overlap(period, { start: 0, end: came }), 0)
  return leastSecondsOf(leastTime ?? nothingOfTheFormat, {
    periodSeconds: of.periods.map(({ start, end }) => end - start),
    from,
    to: from + seconds,
    policyShare,
  })
}

function overlap(one: Period, other: Period): Seconds {
  return Math.max(0, Math.min(one.end, other.end) - Math.max(one.start, other.start))
}
