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
    const parsed = parse(text, {
      delimiter: separator,
      record_delimiter: ['\r\n', '\n', '\r'],
      bom: true,
      info: true,
      relax_quotes: true,
      relax_column_count: true,
    }) as unknown as readonly {
      readonly record: readonly string[]
      readonly info: { readonly lines: number }
    }[]
    return {
      records: parsed.map(({ record, info }) => ({ line: firstLine(record, info.lines), cells: record })),
      openQuoteLine: null,
    }
  } catch (error) {
    if (error instanceof CsvError && error.code === 'CSV_QUOTE_NOT_CLOSED') {
      return { records: [], openQuoteLine: lineOfOpenQuote(text, separator) }
    }
    throw error
  }
}

// The parser counts the lines up to the end of a record.
function firstLine(record: readonly string[], lastLine: number): number {
  return lastLine - record.reduce((breaks, cell) => breaks + (cell.match(/\r\n|\n|\r/g)?.length ?? 0), 0)
}

/** The last line on which a cell begins with a quote: the earlier ones were closed, or the parser would have stopped there. */
function lineOfOpenQuote(text: string, separator: string): number {
  const begins = [...text.matchAll(new RegExp(`(?:^|[\\r\\n${separator}])"`, 'g'))]
  const at = begins.at(-1)
  const before = text.slice(0, at ? at.index + at[0].length - 1 : 0)
  return (before.match(/\r\n|\n|\r/g)?.length ?? 0) + 1
}
