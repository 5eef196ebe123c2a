import { type Seconds, secondsInMinute } from '#common/time'

const step = 5

/** To the nearest five minutes: pages for families must not sound more exact than the book is. Zero: under five. */
export function aboutMinutes(seconds: Seconds): number {
  return Math.round(seconds / (step * secondsInMinute)) * step
}
