import 'server-only'
import type { Problem } from '#common/problem'
import { accept, type Result } from '#common/result'
import type { AttendancePlan, KnownSession } from '#exchange/attendance/attendance-plan'
import { planAttendance } from '#exchange/attendance/plan-attendance'
import { type AttendanceReading, readAttendance } from '#exchange/attendance/read-attendance'
import type { CalendarPlan } from '#exchange/calendar/calendar-plan'
import { planCalendar } from '#exchange/calendar/plan-calendar'
import { type CalendarReading, readCalendar } from '#exchange/calendar/read-calendar'
import { decodeText, type Encoding } from '#exchange/csv/decode-text'
import { type Rows, readRows } from '#exchange/csv/read-rows'
import { planRoster } from '#exchange/roster/plan-roster'
import { type RosterReading, readRoster } from '#exchange/roster/read-roster'
import type { RosterPlan } from '#exchange/roster/roster-plan'
import type { CalendarBook, ImportBook } from '#server/import-book'
import { answersOf, type FileInput, settingsOf } from '#server/import-input'

/** A file taken apart, before anything is compared. */
export type FileRows = Rows & { readonly encoding: Encoding }

export type RosterFile = {
  readonly file: FileRows
  readonly reading: RosterReading
  readonly plan: RosterPlan
}
export type AttendanceFile = {
  readonly file: FileRows
  readonly reading: AttendanceReading
  readonly plan: AttendancePlan
}

export type CalendarFile = {
  readonly file: FileRows
  readonly reading: CalendarReading
  readonly plan: CalendarPlan
}

export function readFileRows(bytes: Uint8Array, input: FileInput): Result<FileRows, Problem> {
  const text = decodeText(bytes, input.encoding)
  if (!text.ok) return text
  const rows = readRows(text.value.text, input.separator)
  return rows.ok ? accept({ ...rows.value, encoding: text.value.encoding }) : rows
}

/** The one way from bytes to a plan: what a person was shown is what the import does. */
export function planRosterFile(
  bytes: Uint8Array,
  input: FileInput,
  book: ImportBook,
): Result<RosterFile, Problem> {
  const file = readFileRows(bytes, input)
  if (!file.ok) return file
  const reading = readRoster(file.value.rows, settingsOf(input), book.season)
  const plan = planRoster(reading.rows, {
    known: book.known,
    answers: answersOf(input),
    defaultFirstDay: input.defaultFirstDay ?? book.season?.firstDay ?? book.today,
  })
  return accept({ file: file.value, reading, plan })
}

export function planAttendanceFile(
  bytes: Uint8Array,
  input: FileInput,
  { sessions, ...book }: ImportBook & { readonly sessions: readonly KnownSession[] },
): Result<AttendanceFile, Problem> {
  const file = readFileRows(bytes, input)
  if (!file.ok) return file
  const reading = readAttendance(file.value.rows, settingsOf(input), book.season)
  const plan = planAttendance(reading.rows, {
    known: book.known,
    sessions,
    seasons: book.seasons,
    today: book.today,
    answers: answersOf(input),
    leftOutSessions: new Set(input.leftOutSessions),
    newPlayers: newPlayersOf(input, book),
    lengthSeconds: input.lengthMinutes * 60,
    lateSeconds: input.lateMinutes * 60,
  })
  return accept({ file: file.value, reading, plan })
}

export function planCalendarFile(
  bytes: Uint8Array,
  input: FileInput,
  { sessions, countsGoals, ...book }: ImportBook & CalendarBook,
): Result<CalendarFile, Problem> {
  const file = readFileRows(bytes, input)
  if (!file.ok) return file
  const reading = readCalendar(file.value.rows, settingsOf(input), book.season)
  const plan = planCalendar(reading.rows, {
    sessions,
    countsGoals,
    seasons: book.seasons,
    today: book.today,
    answers: new Map(Object.entries(input.answers).map(([line, answer]) => [Number(line), answer])),
  })
  return accept({ file: file.value, reading, plan })
}

/** Into an empty squad everyone is new; otherwise a stranger may be a known player written differently. */
export function newPlayersOf(input: FileInput, book: ImportBook): 'ask' | 'add' {
  return input.newPlayers ?? (book.known.some(({ isOfSquad }) => isOfSquad) ? 'ask' : 'add')
}
