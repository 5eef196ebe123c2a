import type { Attendance } from '#fairness/account'
import { words } from '#ui/words'

const signs: Readonly<Record<Attendance, string>> = {
  here: '●',
  late: '◐',
  left: '◑',
  notPlaying: '○',
  out: '✕',
  away: '–',
}

/** How a player was at one session: a sign of its own shape, and its words. */
export function AttendanceMark({
  attendance,
  hasWord = false,
}: {
  readonly attendance: Attendance
  readonly hasWord?: boolean
}) {
  return (
    <span className="whitespace-nowrap">
      <span aria-hidden="true" className="inline-block w-5 text-center">
        {signs[attendance]}
      </span>
      <span className={hasWord ? undefined : 'sr-only'}>{words.attendance[attendance]}</span>
    </span>
  )
}
