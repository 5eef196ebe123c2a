import type { CalendarField } from '#exchange/calendar/calendar-entry'
import { calendarWords } from '#exchange/calendar/calendar-words'
import { readResult } from '#exchange/calendar/read-result'
import { timeOfDay } from '#exchange/calendar/time-of-day'
import type { CsvRecord } from '#exchange/csv/parse-records'
import { type DaySpan, isDateLike } from '#exchange/table/date-form'
import { type ColumnGuess, columnCount, findHeader } from '#exchange/table/header'

/** Which column of a calendar is what: by its header, else by what stands in it. One entry for every column. */
export function guessCalendar(
  rows: readonly CsvRecord[],
  within: DaySpan | null,
): ColumnGuess<CalendarField> {
  const count = columnCount(rows)
  const header = findHeader(rows, calendarWords, ['date'])
  const columns = header?.columns ?? guessByContent(rows, count, within)
  const hasSides = columns.includes('homeTeam') && columns.includes('awayTeam')
  return {
    headerLine: header?.headerLine ?? null,
    columns: Array.from({ length: count }, (_, at) => {
      const field = columns[at] ?? null
      return field === 'result' && hasSides ? 'resultHomeFirst' : field
    }),
  }
}

type Kind = 'date' | 'time' | 'result' | 'text' | 'empty'

function guessByContent(
  rows: readonly CsvRecord[],
  count: number,
  within: DaySpan | null,
): readonly (CalendarField | null)[] {
  const open: Record<Kind, CalendarField[]> = {
    date: ['date'],
    time: ['time'],
    result: ['result'],
    text: ['title', 'place'],
    empty: [],
  }
  return Array.from({ length: count }, (_, at) => {
    const cells = rows.map((row) => row.cells[at] ?? '')
    return open[kindOf(cells, within)].shift() ?? null
  })
}

function kindOf(cells: readonly string[], within: DaySpan | null): Kind {
  const filled = cells.filter((cell) => cell !== '')
  if (filled.length === 0) return 'empty'
  const most = (fits: (cell: string) => boolean) => filled.filter(fits).length * 10 >= filled.length * 8
  // 3:15 may be either; a list without headings has times more often than results.
  if (most((cell) => /[:.h]\d{2}|[ap]m$/i.test(cell) && timeOfDay(cell) !== undefined)) return 'time'
  if (most((cell) => isDateLike(cell, within))) return 'date'
  if (most((cell) => readResult(cell).kind !== 'wrong')) return 'result'
  return most((cell) => /\p{L}/u.test(cell)) ? 'text' : 'empty'
}
