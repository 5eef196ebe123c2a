import type { CsvRecord } from '#exchange/csv/parse-records'
import { guessRoster } from '#exchange/roster/guess-roster'
import { type RosterEntry, type RosterField, rosterFields } from '#exchange/roster/roster-entry'
import { isOwnRoster } from '#exchange/roster/write-roster'
import type { DaySpan } from '#exchange/table/date-form'
import { type DateReading, dayOfText, readDateOrder } from '#exchange/table/date-order'
import { chosenColumns, type FileSettings, type NameOrder } from '#exchange/table/file-settings'
import { codeProblem, guessNameOrder, nameInRow, nameProblem } from '#exchange/table/name-cells'
import { cellOf, type RowReading } from '#exchange/table/row-reading'
import { yesOrNo } from '#exchange/table/yes-no'

/** A roster as it was understood, with what was guessed, so that it can be shown and changed. */
export type RosterReading = {
  readonly headerLine: number | null
  readonly columns: readonly (RosterField | null)[]
  readonly dateReading: DateReading
  readonly nameOrder: NameOrder
  /** Every row below the header, in order. */
  readonly rows: readonly RowReading<RosterEntry>[]
}

/** Rows → players as written. Nothing is compared with the book yet. `within`: the season, for dates without a year. */
export function readRoster(
  rows: readonly CsvRecord[],
  settings: FileSettings,
  within: DaySpan | null,
): RosterReading {
  const guess = guessRoster(rows, within)
  const headerLine = settings.headerLine === null ? guess.headerLine : settings.headerLine || null
  const header = rows.find((row) => row.line === headerLine)
  const columns = chosenColumns(settings.columns, guess.columns, rosterFields)
  const body = rows.filter((row) => headerLine === null || row.line > headerLine)
  const cellsOf = (field: RosterField) => body.map((row) => cellOf(row, columns, field))
  const dateReading = settings.dateOrder
    ? { kind: 'certain' as const, order: settings.dateOrder }
    : readDateOrder([...cellsOf('firstDay'), ...cellsOf('lastDay')], within)
  const isOwn = header !== undefined && isOwnRoster(header.cells)
  const nameOrder = settings.nameOrder ?? (isOwn ? 'asWritten' : guessNameOrder(cellsOf('name')))
  const titleLines = headerLine === null ? titleLinesOf(body, columns) : new Set<number>()
  const how = { columns, nameOrder, dateReading, within, titleLines }
  return { headerLine, columns, dateReading, nameOrder, rows: body.map((row) => readRow(row, how)) }
}

type How = Pick<RosterReading, 'columns' | 'nameOrder' | 'dateReading'> & {
  readonly within: DaySpan | null
  readonly titleLines: ReadonlySet<number>
}

function readRow(row: CsvRecord, how: How): RowReading<RosterEntry> {
  const cell = (field: RosterField) => cellOf(row, how.columns, field)
  const name = nameInRow(row, how.columns, how.nameOrder)
  if (how.titleLines.has(row.line))
    return { line: row.line, cells: row.cells, result: { kind: 'passedOver', why: 'a title' } }
  if (name === '') return { line: row.line, cells: row.cells, result: nameless(row, how.columns) }
  const problems: string[] = []
  const problem = nameProblem(name)
  if (problem) problems.push(problem)
  const wrongCode = codeProblem(cell('code'))
  if (wrongCode) problems.push(wrongCode)
  const entry: RosterEntry = {
    name,
    shirt: cell('shirt') || null,
    code: cell('code') || null,
    keeps: readYesNo(cell('keeps'), 'may keep goal', problems),
    wantsToKeep: readYesNo(cell('wantsToKeep'), 'wants to keep goal', problems),
    firstDay: readDay(cell('firstDay'), how, problems),
    lastDay: readDay(cell('lastDay'), how, problems),
  }
  if (entry.firstDay && entry.lastDay && entry.lastDay < entry.firstDay) {
    problems.push(`The last day, ${entry.lastDay}, is before the first day, ${entry.firstDay}.`)
  }
  const result =
    problems.length > 0 ? { kind: 'problem' as const, problems } : { kind: 'understood' as const, entry }
  return { line: row.line, cells: row.cells, result }
}

/** Without a header: rows at the top with one text, in a file whose other rows have more. */
function titleLinesOf(rows: readonly CsvRecord[], columns: How['columns']): ReadonlySet<number> {
  if (columns.filter((field) => field !== null).length < 2) return new Set()
  const first = rows.findIndex((row) => row.cells.filter((cell) => cell !== '').length > 1)
  return new Set(rows.slice(0, Math.max(first, 0)).map((row) => row.line))
}

function nameless(row: CsvRecord, columns: How['columns']): RowReading<RosterEntry>['result'] {
  const says = (['code', 'firstDay', 'lastDay'] as const).some((field) => cellOf(row, columns, field) !== '')
  return says
    ? { kind: 'problem', problems: ['There is no name in this row. Write it there, or leave the row out.'] }
    : { kind: 'passedOver', why: 'no name in it' }
}

function readYesNo(cell: string, what: string, problems: string[]): boolean | null {
  const answer = yesOrNo(cell)
  if (answer !== undefined) return answer
  problems.push(`“${cell}” is neither yes nor no (${what}). Write yes or no, or nothing.`)
  return null
}

function readDay(cell: string, how: How, problems: string[]): string | null {
  if (cell === '' || cell === '-') return null
  const order = how.dateReading.kind === 'open' ? (how.dateReading.orders[0] ?? 'dmy') : how.dateReading.order
  const day = dayOfText(cell, order, how.within)
  if (day === null)
    problems.push(`“${cell}” is no day of the calendar as the dates are read here. Write it like 2026-12-31.`)
  return day
}
