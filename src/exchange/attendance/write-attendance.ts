import type { Day, Seconds } from '#common/time'
import { ownAttendanceHeader } from '#exchange/attendance/own-attendance'
import { writeCsv } from '#exchange/csv/write-csv'
import type { RegisterState } from '#squad/register'

/** A register line with its session, or a member who was away (`state` away, no seconds). */
export type AttendanceLine = {
  readonly day: Day
  readonly kind: 'practice' | 'match'
  readonly title: string
  /** Code or id of the session. */
  readonly session: string
  readonly lengthSeconds: Seconds | null
  readonly name: string
  /** Code or id of the player. */
  readonly player: string
  readonly state: RegisterState | 'away'
  readonly from: Seconds | null
  readonly to: Seconds | null
}

const stateWords = {
  here: 'here',
  notPlaying: 'here but not playing',
  out: 'out for today',
  away: 'away',
} as const

/** Attendance as CSV; `readAttendance` understands it without guessing. */
export function writeAttendance(lines: readonly AttendanceLine[]): string {
  const rows = lines.map((l) => [
    l.day,
    l.kind,
    l.title,
    l.session,
    l.lengthSeconds,
    l.name,
    l.player,
    stateWords[l.state],
    l.from,
    l.to,
  ])
  return writeCsv([ownAttendanceHeader, ...rows])
}
