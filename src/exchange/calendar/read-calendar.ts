import { type CalendarEntry, type CalendarField, calendarFields } from '#exchange/calendar/calendar-entry'
import { type CalendarRowContext, readCalendarRow } from '#exchange/calendar/calendar-row'
import { guessCalendar } from '#exchange/calendar/guess-calendar'
import { ownSideOf } from '#exchange/calendar/own-side'
import type { CsvRecord } from '#exchange/csv/parse-records'
import type { DaySpan } from '#exchange/table/date-form'
import { type DateReading, readDateOrder } from '#exchange/table/date-order'
import { chosenColumns, type FileSettings } from '#exchange/table/file-settings'
import { cellOf, type RowReading } from '#exchange/table/row-reading'

/** A calendar as it was understood, with what was guessed, so that it can be shown and changed. */
export type CalendarReading = {
  readonly headerLine: number | null
  readonly columns: readonly (CalendarField | null)[]
  readonly dateReading: DateReading
  /** What is wrong with the columns as a whole. */
  readonly problems: readonly string[]
  /** Every row below the header, in order. */
  readonly rows: readonly RowReading<CalendarEntry>[]
}

/** Rows → practices and matches as written. Nothing is compared with the book yet. `within`: the season, for dates without a year. */
export function readCalendar(
  rows: readonly CsvRecord[],
  settings: FileSettings,
  within: DaySpan | null,
): CalendarReading {
  const guess = guessCalendar(rows, within)
  const headerLine = settings.headerLine === null ? guess.headerLine : settings.headerLine || null
  const columns = chosenColumns(settings.columns, guess.columns, calendarFields)
  const body = rows.filter((row) => headerLine === null || row.line > headerLine)
  const cellsOf = (field: CalendarField) => body.map((row) => cellOf(row, columns, field))
  const dateReading = settings.dateOrder
    ? { kind: 'certain' as const, order: settings.dateOrder }
    : readDateOrder(cellsOf('date'), within)
  const ownSide = ownSideOf(body, columns)
  const context: CalendarRowContext = { columns, dateReading, within, ownSide }
  return {
    headerLine,
    columns,
    dateReading,
    problems: problemsOfColumns(columns, ownSide),
    rows: body.map((row) => readCalendarRow(row, context)),
  }
}

function problemsOfColumns(
  columns: readonly (CalendarField | null)[],
  ownSide: string | null,
): readonly string[] {
  const has = (field: CalendarField) => columns.includes(field)
  return [
    ...(has('date') ? [] : ['No column holds the days. Say which one does.']),
    ...(has('homeTeam') !== has('awayTeam')
      ? ['One column holds a home or away side, and none the other. Say which one does, or leave both out.']
      : []),
    ...(has('homeTeam') && has('awayTeam') && ownSide === null
      ? [
          'No side stands in every row as home or away, so it is not clear which one is yours. Leave the rows of others out of the file.',
        ]
      : []),
    ...(has('ourGoals') !== has('theirGoals')
      ? ['One column holds the goals of one side, and none those of the other. Say which one does.']
      : []),
    ...(has('resultHomeFirst') && !(has('homeTeam') && has('awayTeam')) && !has('side')
      ? ['Whose goals come first is not clear: no column says who was at home. Say which one does.']
      : []),
  ]
}
