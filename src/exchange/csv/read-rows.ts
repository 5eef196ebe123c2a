import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { fromSafeCell } from '#exchange/csv/formula'
import { type CsvRecord, parseRecords } from '#exchange/csv/parse-records'
import { guessSeparator, type Separator, separatorHint } from '#exchange/csv/separator'

/** Cells are trimmed, their inner line breaks are spaces; rows without any text are gone. At least one row. */
export type Rows = { readonly separator: Separator; readonly rows: readonly CsvRecord[] }

const mostRows = 20_000
const mostColumns = 500
const mostCellLetters = 2000

/** Text → rows, by the separator asked for or else the one that fits. Errors: an open quote, no row, too many. */
export function readRows(text: string, asked: Separator | null): Result<Rows, Problem> {
  const hinted = separatorHint(text) !== null
  const separator = asked ?? guessSeparator(text)
  const { records, openQuoteLine } = parseRecords(text, separator)
  if (openQuoteLine !== null) return refuse({ path: `line ${openQuoteLine}`, message: openQuote })
  const rows = (hinted ? records.slice(1) : records)
    .map(({ line, cells }) => ({ line, cells: cells.map(tidy) }))
    .filter((row) => row.cells.some((cell) => cell !== ''))
  const problem = tooMuch(rows)
  return problem ? refuse(problem) : accept({ separator, rows })
}

const openQuote = 'A quotation mark is opened here and never closed. Close it, or take it out.'

function tidy(cell: string): string {
  // The apostrophe goes first: behind it a leading tab or line break belongs to the text.
  return fromSafeCell(cell.trim())
    .replace(/[\s\u00a0]+/g, ' ')
    .trim()
}

function tooMuch(rows: readonly CsvRecord[]): Problem | null {
  if (rows.length === 0) return { path: 'file', message: 'There is no row in the file.' }
  if (rows.length > mostRows) {
    return {
      path: 'file',
      message: `There are ${rows.length} rows; at most ${mostRows} can be read at once. Split the file.`,
    }
  }
  const wide = rows.find((row) => row.cells.length > mostColumns)
  if (wide) {
    return {
      path: `line ${wide.line}`,
      message: `has ${wide.cells.length} columns; at most ${mostColumns} can be read.`,
    }
  }
  const full = rows.find((row) => row.cells.some((cell) => cell.length > mostCellLetters))
  return full
    ? {
        path: `line ${full.line}`,
        message: `has a cell of more than ${mostCellLetters} letters, which no list of players has. Perhaps a quotation mark is missing.`,
      }
    : null
}
