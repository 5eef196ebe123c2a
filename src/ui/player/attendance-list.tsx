import type { Day } from '#common/time'
import type { Attendance } from '#fairness/account'
import { AttendanceMark } from '#ui/figures/attendance-mark'
import { formatDay } from '#ui/format-day'
import { counted } from '#ui/plural'

/** `attendance` null: not written down. */
export type AttendedDay = {
  readonly sessionId: string
  readonly day: Day
  readonly attendance: Attendance | null
}

/** How the player was at every session of the kind, and the count of it. */
export function AttendanceList({
  days,
  kind,
}: {
  readonly days: readonly AttendedDay[]
  readonly kind: 'practice' | 'match'
}) {
  const known = days.filter(({ attendance }) => attendance !== null)
  const there = known.filter(({ attendance }) => attendance !== 'away').length
  const noun =
    kind === 'practice' ? counted(known.length, 'practice') : counted(known.length, 'match', 'matches')
  return (
    <>
      <p>
        There for {there} of {noun} written down.
      </p>
      <ul className="mt-2 grid grid-cols-[repeat(auto-fill,minmax(10rem,1fr))] gap-x-4 text-sm">
        {days.map(({ sessionId, day, attendance }) => (
          <li key={sessionId} className="flex justify-between gap-2 border-b border-rule py-1.5">
            <span className="whitespace-nowrap">{formatDay(day, 'short')}</span>
            {attendance ? (
              <AttendanceMark attendance={attendance} hasWord />
            ) : (
              <span className="text-right text-soft">not written</span>
            )}
          </li>
        ))}
      </ul>
    </>
  )
}
