import type { Day } from '#common/time'
import type { Attendance } from '#fairness/account'
import { AttendanceMark } from '#ui/figures/attendance-mark'
import { formatDay } from '#ui/format-day'
import { Details } from '#ui/page/details'
import { words } from '#ui/words'

type Attended = { readonly day: Day; readonly attendance: Attendance | null }

type AttendancePartProps = { readonly kind: 'practice' | 'match'; readonly attendance: readonly Attended[] }

/** How often the child came; days that nobody wrote down are told as that. */
export function AttendancePart({ kind, attendance }: AttendancePartProps) {
  if (attendance.length === 0) return null
  return (
    <Details summary={`${words.kinds[kind]}: ${attendanceText(attendance)}`}>
      <ul className="columns-1 gap-8 sm:columns-2">
        {attendance.map(({ day, attendance: how }, index) => (
          <li
            // Two of one day are told apart by nothing but their place.
            // biome-ignore lint/suspicious/noArrayIndexKey: the list never changes on the page
            key={index}
            className="flex break-inside-avoid justify-between gap-4 border-b border-rule py-1.5"
          >
            <span>{formatDay(day)}</span>
            {how ? (
              <AttendanceMark attendance={how} hasWord />
            ) : (
              <span className="text-soft">{words.written.notWritten}</span>
            )}
          </li>
        ))}
      </ul>
    </Details>
  )
}

const order: readonly Attendance[] = ['here', 'late', 'left', 'notPlaying', 'out', 'away']

/** "24 here · 2 came late · 3 away · 5 not written down". */
export function attendanceText(attendance: readonly Pick<Attended, 'attendance'>[]): string {
  const count = (how: Attendance | null) => attendance.filter((one) => one.attendance === how).length
  const parts = order.filter((how) => count(how) > 0).map((how) => `${count(how)} ${words.attendance[how]}`)
  if (count(null) > 0) parts.push(`${count(null)} ${words.written.notWritten}`)
  return parts.join(' · ')
}
