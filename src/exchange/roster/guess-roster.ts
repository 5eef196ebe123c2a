import type { CsvRecord } from '#exchange/csv/parse-records'
import type { RosterField } from '#exchange/roster/roster-entry'
import { rosterWords } from '#exchange/roster/roster-words'
import { type DaySpan, isDateLike } from '#exchange/table/date-form'
import { type ColumnGuess, columnCount, findHeader } from '#exchange/table/header'

/** Which column of a roster is what: by its header, else by what stands in it. One entry for every column. */
export function guessRoster(rows: readonly CsvRecord[], within: DaySpan | null): ColumnGuess<RosterField> {
  const count = columnCount(rows)
  const header = findHeader(rows, rosterWords, ['name', 'firstName', 'lastName'])
  const columns = header?.columns ?? guessByContent(rows, count, within)
  return {
    headerLine: header?.headerLine ?? null,
    columns: Array.from({ length: count }, (_, at) => columns[at] ?? null),
  }
}

type Kind = 'date' | 'number' | 'code' | 'text' | 'empty'

function guessByContent(
  rows: readonly CsvRecord[],
  count: number,
  within: DaySpan | null,
): readonly (RosterField | null)[] {
  const kinds = Array.from({ length: count }, (_, at) =>
    kindOf(
      rows.map((row) => row.cells[at] ?? ''),
      within,
    ),
  )
  const texts = kinds.filter((kind) => kind === 'text').length
  // Two columns of words are taken for first and last name; the page shows it, and it can be changed.
  const open: Record<Kind, RosterField[]> = {
    date: ['firstDay', 'lastDay'],
    number: ['shirt'],
    code: ['code'],
    text: texts === 1 ? ['name'] : ['firstName', 'lastName'],
    empty: [],
  }
  return kinds.map((kind) => open[kind].shift() ?? null)
}

function kindOf(cells: readonly string[], within: DaySpan | null): Kind {
  const filled = cells.filter((cell) => cell !== '')
  if (filled.length === 0) return 'empty'
  const most = (fits: (cell: string) => boolean) => filled.filter(fits).length * 10 >= filled.length * 8
  if (most((cell) => /^\d{1,3}$/.test(cell))) return 'number'
  if (most((cell) => isDateLike(cell, within))) return 'date'
  if (most((cell) => /\d/.test(cell) && !cell.includes(' '))) return 'code'
  return most((cell) => /\p{L}/u.test(cell)) ? 'text' : 'empty'
}
