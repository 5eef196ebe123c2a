import type { Day } from '#common/time'

const dayMilliseconds = 24 * 60 * 60 * 1000

/** The day so many days later, or earlier when negative. Counted in UTC, where every day has as many seconds. */
export function daysLater(day: Day, days: number): Day {
  return new Date(Date.parse(`${day}T00:00:00.000Z`) + days * dayMilliseconds).toISOString().slice(0, 10)
}
