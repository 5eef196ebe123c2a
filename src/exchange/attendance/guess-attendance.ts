import type { AttendanceField } from '#exchange/attendance/attendance-entry'
import { attendanceWords } from '#exchange/attendance/attendance-words'
import { splitDayHeader } from '#exchange/attendance/day-header'
import type { CsvRecord } from '#exchange/csv/parse-records'
import { type DaySpan, isDateLike } from '#exchange/table/date-form'
import { type ColumnGuess, columnCount, fieldsOf } from '#exchange/table/header'

const rowsSearched = 12

/** Which column of an attendance list is what. A header with dates makes a column of marks for each of its days. */
export function guessAttendance(
  rows: readonly CsvRecord[],
  within: DaySpan | null,
): ColumnGuess<AttendanceField> {
  const count = columnCount(rows)
  const headers = rows
    .slice(0, rowsSearched)
    .map((row) => ({ row, columns: headerFields(row.cells, within) }))
  const best = headers.reduce<(typeof headers)[number] | null>(
    (a, b) => (knownCount(b.columns) > knownCount(a?.columns ?? []) ? b : a),
    null,
  )
  const body = best ? rows.filter((row) => row.line > best.row.line) : rows
  const columns = best ? withNameColumn(best.columns, body) : guessByContent(rows, count, within)
  return {
    headerLine: best?.row.line ?? null,
    columns: Array.from({ length: count }, (_, at) => columns[at] ?? null),
  }
}

/** Fields of a header row; nothing when the row is not one: a row of the list has at most one date and no heading. */
function headerFields(cells: readonly string[], within: DaySpan | null): readonly (AttendanceField | null)[] {
  const named = fieldsOf(cells, attendanceWords)
  const columns = cells.map(
    (cell, at) => named[at] ?? (splitDayHeader(cell, within) ? ('marks' as const) : null),
  )
  const days = columns.filter((field) => field === 'marks').length
  const hasName = columns.some(
    (field) => field === 'name' || field === 'firstName' || field === 'lastName' || field === 'code',
  )
  const isHeader =
    days >= 2 || (hasName && (days === 1 || columns.includes('date') || columns.includes('mark')))
  return isHeader ? columns : []
}

function knownCount(columns: readonly (AttendanceField | null)[]): number {
  return columns.filter((field) => field !== null).length
}

/** A list of days often has nothing above its names: then they are the first column of words. */
function withNameColumn(
  columns: readonly (AttendanceField | null)[],
  body: readonly CsvRecord[],
): readonly (AttendanceField | null)[] {
  if (
    columns.some(
      (field) => field === 'name' || field === 'firstName' || field === 'lastName' || field === 'code',
    )
  )
    return columns
  const at = columns.findIndex(
    (field, column) => field === null && isWords(body.map((row) => row.cells[column] ?? '')),
  )
  return columns.map((field, column) => (column === at ? 'name' : field))
}

function isWords(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== '')
  return filled.length > 0 && filled.filter((cell) => /\p{L}{2}/u.test(cell)).length * 2 > filled.length
}

function guessByContent(
  rows: readonly CsvRecord[],
  count: number,
  within: DaySpan | null,
): readonly (AttendanceField | null)[] {
  const cellsOf = (at: number) => rows.map((row) => row.cells[at] ?? '').filter((cell) => cell !== '')
  const all = Array.from({ length: count }, (_, at) => at)
  const date = all.find(
    (at) => cellsOf(at).length > 0 && cellsOf(at).every((cell) => isDateLike(cell, within)),
  )
  const rest = all.filter((at) => at !== date)
  // The names are the column with the most different texts, the marks the other one that has fewest.
  const variety = (at: number) => new Set(cellsOf(at)).size
  const words = rest.filter((at) => isWords(rows.map((row) => row.cells[at] ?? '')))
  const name = words.reduce<number | undefined>(
    (a, b) => (a === undefined || variety(b) > variety(a) ? b : a),
    undefined,
  )
  const mark = rest
    .filter((at) => at !== name && cellsOf(at).length > 0)
    .reduce<number | undefined>((a, b) => (a === undefined || variety(b) < variety(a) ? b : a), undefined)
  return all.map((at) => (at === date ? 'date' : at === name ? 'name' : at === mark ? 'mark' : null))
}
