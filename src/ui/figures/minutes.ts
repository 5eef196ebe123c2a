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

/** "about 55 min", to the nearest five, for pages that must not sound more exact than the book is. */
export function aboutMinutesText(seconds: Seconds): string {
  const fives = Math.round(seconds / (5 * secondsInMinute)) * 5
  return fives === 0 && seconds > 0 ? 'under 5 min' : `about ${fives} min`
}
