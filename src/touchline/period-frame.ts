import type { Seconds } from '#common/time'
import type { MatchFormat } from '#match/format/match-format'

/** Where a period stands in playing time as planned, and how long it is meant to be. */
export type PeriodFrame = {
  readonly start: Seconds
  readonly seconds: Seconds
  /** Beyond what the format has: nobody planned how long it is. */
  readonly isExtra: boolean
}

/** Where nobody says how long an extra period is. */
const extraSeconds = 10 * 60

/** A period (from 0) of a match as planned; those beyond the format's follow it end to end. */
export function periodFrame(
  { periodSeconds }: Pick<MatchFormat, 'periodSeconds'>,
  period: number,
): PeriodFrame {
  const seconds = periodSeconds[period]
  const start = periodSeconds.slice(0, period).reduce((sum, one) => sum + one, 0)
  if (seconds !== undefined) return { start, seconds, isExtra: false }
  return {
    start: start + (period - periodSeconds.length) * extraSeconds,
    seconds: extraSeconds,
    isExtra: true,
  }
}

/** The period in which a second of the plan lies; what begins one belongs to it. */
export function periodOfSecond(format: Pick<MatchFormat, 'periodSeconds'>, second: Seconds): number {
  let period = 0
  for (
    let frame = periodFrame(format, 0);
    frame.start + frame.seconds <= second;
    frame = periodFrame(format, period)
  )
    period += 1
  return period
}
