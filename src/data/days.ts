import 'server-only'
import type { Day } from '#common/time'

/** Columns of days have no zone, and travel as UTC midnights: both ways stay in UTC, so no machine's zone can move a day. */
export function dayOf(date: Date): Day {
  return date.toISOString().slice(0, 10)
}

export function dayOrNull(date: Date | null): Day | null {
  return date && dayOf(date)
}

export function dateOf(day: Day): Date {
  return new Date(`${day}T00:00:00.000Z`)
}

export function dateOrNull(day: Day | null): Date | null {
  return day === null ? null : dateOf(day)
}
