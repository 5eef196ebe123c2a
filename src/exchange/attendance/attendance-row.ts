import type {
  AttendanceEntry,
  AttendanceField,
  AttendanceMark,
  MarkMeaning,
  SessionName,
} from '#exchange/attendance/attendance-entry'
import { kindFrom } from '#exchange/attendance/attendance-words'
import { dayOfHeader } from '#exchange/attendance/day-header'
import { readMark } from '#exchange/attendance/mark-words'
import type { CsvRecord } from '#exchange/csv/parse-records'
import type { DaySpan } from '#exchange/table/date-form'
import { type DateReading, dayOfText } from '#exchange/table/date-order'
import type { NameOrder } from '#exchange/table/file-settings'
import { codeProblem, isTitleTooLong, longestTitle, nameInRow, nameProblem } from '#exchange/table/name-cells'
import { cellOf, type RowReading } from '#exchange/table/row-reading'

type Dates = { readonly dateReading: DateReading; readonly within: DaySpan | null }

export type AttendanceRowContext = Dates & {
  readonly columns: readonly (AttendanceField | null)[]
  readonly nameOrder: NameOrder
  /** The session of each column of marks. */
  readonly days: ReadonlyMap<number, SessionName>
  readonly meanings: ReadonlyMap<string, MarkMeaning | null>
}

/** The sessions that the header names, by column; two columns of one day need a word that tells them apart. */
export function dayColumnsOf(
  header: readonly string[],
  columns: readonly (AttendanceField | null)[],
  dates: Dates,
): { readonly columns: ReadonlyMap<number, SessionName>; readonly problems: readonly string[] } {
  const found = new Map<number, SessionName>()
  const taken = new Map<string, number>()
  const problems: string[] = []
  for (const [at, field] of columns.entries()) {
    if (field !== 'marks') continue
    const read = dayOfHeader(header[at] ?? '', orderOf(dates.dateReading), dates.within)
    if (!read) {
      problems.push(
        `Column ${at + 1} holds marks, but “${header[at] ?? ''}” above it is no day. Write it like 2026-12-31.`,
      )
      continue
    }
    const session = {
      day: read.day,
      kind: kindFrom(read.rest),
      title: read.rest,
      code: null,
      lengthSeconds: null,
    }
    const before = taken.get(`${session.day} ${session.kind} ${session.title.toLowerCase()}`)
    if (before !== undefined) {
      problems.push(
        `Columns ${before + 1} and ${at + 1} are both ${session.day}. Write beside the date what each is.`,
      )
    }
    taken.set(`${session.day} ${session.kind} ${session.title.toLowerCase()}`, at)
    found.set(at, session)
  }
  return { columns: found, problems }
}

/** As the book keeps it. */
const totals = [
  'total',
  'totals',
  'sum',
  'present',
  'attendance',
  'summe',
  'gesamt',
  'anwesend',
  'suma',
  'totaal',
]

export function readAttendanceRow(
  row: CsvRecord,
  context: AttendanceRowContext,
): RowReading<AttendanceEntry> {
  const { columns } = context
  const name = nameInRow(row, columns, context.nameOrder)
  const code = cellOf(row, columns, 'code') || null
  const done = (result: RowReading<AttendanceEntry>['result']) => ({
    line: row.line,
    cells: row.cells,
    result,
  })
  if (name === '' && code === null) return done({ kind: 'passedOver', why: 'no name in it' })
  if (totals.includes(name.toLowerCase())) return done({ kind: 'passedOver', why: 'a total' })
  const problems: string[] = []
  const wrongName = name === '' ? null : nameProblem(name)
  if (wrongName) problems.push(wrongName)
  for (const text of [code ?? '', cellOf(row, columns, 'session')]) {
    const wrongCode = codeProblem(text)
    if (wrongCode) problems.push(wrongCode)
  }
  if (isTitleTooLong(cellOf(row, columns, 'title')))
    problems.push(`The title has more than ${longestTitle} characters.`)
  const marks = columns.includes('marks')
    ? readMarksOfDays(row, context, problems)
    : readOneMark(row, context, problems)
  if (problems.length > 0) return done({ kind: 'problem', problems: [...new Set(problems)] })
  return done({
    kind: 'understood',
    entry: { name, code, shirt: cellOf(row, columns, 'shirt') || null, marks },
  })
}

function readMarksOfDays(
  row: CsvRecord,
  context: AttendanceRowContext,
  problems: string[],
): readonly AttendanceMark[] {
  return [...context.days].flatMap(([at, session]) => {
    const mark = markOf(row.cells[at] ?? '', context, problems)
    return mark ? [{ ...mark, session, fromSecond: null, toSecond: null }] : []
  })
}

function readOneMark(
  row: CsvRecord,
  context: AttendanceRowContext,
  problems: string[],
): readonly AttendanceMark[] {
  const cell = (field: AttendanceField) => cellOf(row, context.columns, field)
  const day = dayOfText(cell('date'), orderOf(context.dateReading), context.within)
  if (day === null)
    problems.push(
      `“${cell('date')}” is no day of the calendar as the dates are read here. Write it like 2026-12-31.`,
    )
  const mark = markOf(cell('mark'), context, problems)
  const whole = (field: AttendanceField, what: string) => wholeNumber(cell(field), what, problems)
  const fromSecond = whole('fromSecond', 'from second')
  const toSecond = whole('toSecond', 'to second')
  const lateMinutes = whole('lateMinutes', 'minutes late')
  const lengthSeconds = whole('lengthSeconds', 'length in seconds')
  if (fromSecond !== null && toSecond !== null && fromSecond >= toSecond) {
    problems.push(`The time there ends at second ${toSecond}, not after it begins at ${fromSecond}.`)
  }
  if (day === null || !mark) return []
  const title = cell('title')
  const kind = kindFrom(context.columns.includes('kind') ? cell('kind') : title)
  const session = { day, kind, title, code: cell('session') || null, lengthSeconds }
  const meaning = mark.meaning === 'here' && (lateMinutes ?? 0) > 0 ? 'late' : mark.meaning
  return [{ meaning, lateMinutes: lateMinutes ?? mark.lateMinutes, session, fromSecond, toSecond }]
}

function markOf(
  cell: string,
  context: AttendanceRowContext,
  problems: string[],
): Pick<AttendanceMark, 'meaning' | 'lateMinutes'> | null {
  const { key, minutes } = readMark(cell)
  const meaning = context.meanings.get(key) ?? null
  if (meaning === null) problems.push(`It is not clear what “${cell}” means. Say it above, under the marks.`)
  return meaning === null || meaning === 'nothing' ? null : { meaning, lateMinutes: minutes }
}

function wholeNumber(cell: string, what: string, problems: string[]): number | null {
  if (cell === '') return null
  if (/^\d{1,6}$/.test(cell)) return Number(cell)
  problems.push(`“${cell}” is no whole number (${what}).`)
  return null
}

function orderOf(reading: DateReading) {
  return reading.kind === 'open' ? (reading.orders[0] ?? 'dmy') : reading.order
}
