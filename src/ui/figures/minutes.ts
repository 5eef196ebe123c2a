import { type Seconds, secondsInMinute } from '#common/time'

/** Seconds to the nearest whole minute; halves go away from zero, so that +30 s and −30 s look alike. */
export function wholeMinutes(seconds: Seconds): number {
  const minutes = Math.sign(seconds) * Math.round(Math.abs(seconds) / secondsInMinute)
  return minutes === 0 ? 0 : minutes
}

/** "54 min". Never hours: what stands in one column must be read at a glance. */
export function minutesText(seconds: Seconds): string {
  return `${wholeMinutes(seconds)} min`
}
