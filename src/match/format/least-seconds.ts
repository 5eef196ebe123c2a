import type { Seconds } from '#common/time'
import type { LeastTime } from '#match/format/match-format'

/**
 * Seconds that a player is promised of one match, by when it is there (playing time from the first kick-off, breaks left
 * out). Of several promises the largest holds, but never more than the time for which it is there. Who comes during a
 * period that the rule for late arrivals names is promised what that says and nothing else.
 */
export function leastSecondsOf(
  promise: LeastTime,
  match: {
    readonly periodSeconds: readonly Seconds[]
    readonly from: Seconds
    readonly to: Seconds
    /** The club's own least share, where the format has none; null: no promise. */
    readonly policyShare: number | null
  },
): Seconds {
  const { periodSeconds, from, to } = match
  const there = Math.max(0, to - from)
  const whole = periodSeconds.reduce((sum, seconds) => sum + seconds, 0)
  const longest = Math.max(0, ...periodSeconds)
  const late =
    from > 0 ? promise.late.find(({ arrivesIn }) => arrivesIn === periodAt(periodSeconds, from)) : undefined
  if (late) return Math.min(there, late.periods * longest)
  const share = promise.share ?? match.policyShare ?? 0
  const isThereThroughout = from === 0 && to >= whole
  const ofPeriods = isThereThroughout ? (promise.periods ?? 0) * longest : 0
  return Math.min(there, Math.ceil(Math.max(0, share * there - noise, ofPeriods)))
}

/** Shares such as 0.55 have no exact form: less than this above a whole second is that second. */
const noise = 1e-6

/** The period, from 1, during which a second falls; a kick-off belongs to the period that begins. */
function periodAt(periodSeconds: readonly Seconds[], second: Seconds): number {
  let end = 0
  for (const [index, seconds] of periodSeconds.entries()) {
    end += seconds
    if (second < end) return index + 1
  }
  return periodSeconds.length + 1
}
