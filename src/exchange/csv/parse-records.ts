import { CsvError, parse } from 'csv-parse/sync'

/** `line`: where the record begins in the text, from 1. */
export type CsvRecord = { readonly line: number; readonly cells: readonly string[] }

/** `openQuoteLine`: the quote opened there is never closed; then there are no records. */
export type ParsedRecords = { readonly records: readonly CsvRecord[]; readonly openQuoteLine: number | null }

/**
 * Splits a text into records. Takes every line break (CR, LF, CRLF, also mixed), breaks inside quotes, rows of
 * different lengths, and quotes inside unquoted cells as people write them (`Tom "TJ" Jones`).
 */
export function parseRecords(text: string, separator: string): ParsedRecords {
  try {
    const parsed: readonly (readonly string[])[] = parse(text, {
      delimiter: separator,
      record_delimiter: ['\r\n', '\n', '\r'],
      bom: true,
      relax_quotes: true,
      relax_column_count: true,
    })
    return { records: withLines(parsed), openQuoteLine: null }
  } catch (error) {
    if (error instanceof CsvError && error.code === 'CSV_QUOTE_NOT_CLOSED') {
      return { records: [], openQuoteLine: lineOfOpenQuote(text, separator) }
    }
    throw error
  }
}

// Counted here: the parser's own count takes a CRLF inside quotes for two lines.
function withLines(parsed: readonly (readonly string[])[]): readonly CsvRecord[] {
  let line = 1
  return parsed.map((cells) => {
    const record = { line, cells }
    line += 1 + cells.reduce((breaks, cell) => breaks + countBreaks(cell), 0)
    return record
  })
}

/** The last line on which a cell begins with a quote: the earlier ones were closed, or the parser would have stopped there. */
function lineOfOpenQuote(text: string, separator: string): number {
  const at = [...text.matchAll(new RegExp(`(?:^|[\\r\\n${separator}])"`, 'g'))].at(-1)
  return countBreaks(text.slice(0, at ? at.index + at[0].length - 1 : 0)) + 1
}

function countBreaks(text: string): number {
  return text.match(/\r\n|\n|\r/g)?.length ?? 0
}
