import {
  type AttendanceEntry,
  type AttendanceField,
  attendanceFields,
  type MarkMeaning,
} from '#exchange/attendance/attendance-entry'
import {
  type AttendanceRowContext,
  dayColumnsOf,
  readAttendanceRow,
} from '#exchange/attendance/attendance-row'
import { splitDayHeader } from '#exchange/attendance/day-header'
import { guessAttendance } from '#exchange/attendance/guess-attendance'
import { guessMarks, readMark } from '#exchange/attendance/mark-words'
import { isOwnAttendance } from '#exchange/attendance/own-attendance'
import type { CsvRecord } from '#exchange/csv/parse-records'
import type { DaySpan } from '#exchange/table/date-form'
import { type DateReading, readDateOrder } from '#exchange/table/date-order'
import { chosenColumns, type FileSettings, type NameOrder } from '#exchange/table/file-settings'
import { guessNameOrder } from '#exchange/table/name-cells'
import { cellOf, type RowReading } from '#exchange/table/row-reading'

/** What a mark of the file is taken for; `meaning` null: a person must say. `times`: how often it stands there. */
export type MarkReading = {
  readonly key: string
  readonly meaning: MarkMeaning | null
  readonly times: number
}

/** An attendance list as it was understood, with what was guessed, so that it can be shown and changed. */
export type AttendanceReading = {
  readonly headerLine: number | null
  readonly columns: readonly (AttendanceField | null)[]
  readonly dateReading: DateReading
  readonly nameOrder: NameOrder
  readonly marks: readonly MarkReading[]
  readonly rows: readonly RowReading<AttendanceEntry>[]
  /** Problems of the whole file: no column of names, two columns of one day. */
  readonly problems: readonly string[]
}

export type AttendanceSettings = FileSettings & {
  /** What a person said a mark means, by its key. */
  readonly marks: Readonly<Record<string, MarkMeaning>>
}

/** Rows → who was how on which day, as written. Nothing is compared with the book yet. */
export function readAttendance(
  rows: readonly CsvRecord[],
  settings: AttendanceSettings,
  within: DaySpan | null,
): AttendanceReading {
  const guess = guessAttendance(rows, within)
  const headerLine = settings.headerLine === null ? guess.headerLine : settings.headerLine || null
  const header = rows.find((row) => row.line === headerLine)?.cells ?? []
  const columns = chosenColumns(settings.columns, guess.columns, attendanceFields)
  const body = rows.filter((row) => headerLine === null || row.line > headerLine)
  const dateReading = settings.dateOrder
    ? { kind: 'certain' as const, order: settings.dateOrder }
    : readDateOrder(datesOf(body, header, columns, within), within)
  const nameOrder =
    settings.nameOrder ??
    (isOwnAttendance(header) ? 'asWritten' : guessNameOrder(body.map((row) => cellOf(row, columns, 'name'))))
  const days = dayColumnsOf(header, columns, { dateReading, within })
  const marks = readMarks(body, columns, settings.marks)
  const meanings = new Map(marks.map((mark) => [mark.key, mark.meaning]))
  const context: AttendanceRowContext = {
    columns,
    nameOrder,
    dateReading,
    within,
    days: days.columns,
    meanings,
  }
  return {
    headerLine,
    columns,
    dateReading,
    nameOrder,
    marks,
    rows: body.map((row) => readAttendanceRow(row, context)),
    problems: [...columnProblems(columns), ...days.problems],
  }
}

type Columns = readonly (AttendanceField | null)[]

function datesOf(
  body: readonly CsvRecord[],
  header: readonly string[],
  columns: Columns,
  within: DaySpan | null,
) {
  const above = header.flatMap((cell, at) =>
    columns[at] === 'marks' ? [splitDayHeader(cell, within)?.dateText ?? ''] : [],
  )
  return [...above, ...body.map((row) => cellOf(row, columns, 'date'))]
}

function readMarks(
  body: readonly CsvRecord[],
  columns: Columns,
  said: Readonly<Record<string, MarkMeaning>>,
): readonly MarkReading[] {
  const times = new Map<string, number>()
  for (const row of body) {
    for (const [at, field] of columns.entries()) {
      if (field !== 'marks' && field !== 'mark') continue
      const { key } = readMark(row.cells[at] ?? '')
      times.set(key, (times.get(key) ?? 0) + 1)
    }
  }
  const guessed = guessMarks(times.keys())
  return [...times].map(([key, count]) => ({
    key,
    meaning: Object.hasOwn(said, key) ? (said[key] ?? null) : (guessed.get(key) ?? null),
    times: count,
  }))
}

function columnProblems(columns: Columns): readonly string[] {
  const has = (...fields: readonly AttendanceField[]) =>
    columns.some((field) => field !== null && fields.includes(field))
  const problems: string[] = []
  if (!has('name', 'firstName', 'lastName', 'code'))
    problems.push('No column holds the names of the players. Say which one does.')
  if (!has('marks') && !has('date')) {
    problems.push('No column holds dates, and no date stands in the header. Say which column holds the date.')
  }
  if (!has('marks') && !has('mark')) problems.push('No column says who was there. Say which one does.')
  return problems
}
