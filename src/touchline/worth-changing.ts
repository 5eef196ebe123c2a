import type { LineUpValues } from '#lineup/line-up'

/** A minute of one player's, squared as unfairness is. Our own judgement, no source. */
const minuteSquared = 60 ** 2

/** Whether a line-up is so much better that names which may have been read out already should change for it. */
export function isWorthChanging(standing: LineUpValues, better: LineUpValues): boolean {
  if (better.promise !== standing.promise) return better.promise < standing.promise
  return standing.minutes - better.minutes >= minuteSquared
}
