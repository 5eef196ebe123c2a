import type { Seconds } from '#common/time'

/** A second of a session as people say it: minute 12:30 is "12.5". Nobody types the seconds of a practice. */
export function sessionMinute(second: Seconds): string {
  return String(Math.round(second / 6) / 10)
}
