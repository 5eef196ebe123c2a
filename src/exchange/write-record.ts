import { writeCsv } from '#exchange/csv/write-csv'

/** The record as CSV: when, by UTC and as RFC 3339 writes it, and what was done. */
export function writeRecord(lines: readonly { readonly at: Date; readonly sentence: string }[]): string {
  return writeCsv([['When', 'What'], ...lines.map(({ at, sentence }) => [at.toISOString(), sentence])])
}
