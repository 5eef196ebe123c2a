import { parseRecords } from '#exchange/csv/parse-records'

export const separators = [',', ';', '\t'] as const
export type Separator = (typeof separators)[number]

const sampleLength = 32_768

/**
 * The separator under which the beginning of the text falls most evenly into columns. A tie goes to the tab, then the
 * semicolon: commas also stand inside names and numbers, the others hardly ever.
 */
export function guessSeparator(text: string): Separator {
  const hint = separatorHint(text)
  if (hint) return hint
  const cut = text.length > sampleLength ? text.slice(0, sampleLength) : text
  const scored = (['\t', ';', ','] as const).map((separator) => ({
    separator,
    score: scoreOf(cut, separator),
  }))
  const best = scored.reduce((a, b) => (b.score > a.score ? b : a))
  return best.score > 0 ? best.separator : ';'
}

/** The `sep=;` line that spreadsheets write and obey. */
export function separatorHint(text: string): Separator | null {
  const mark = /^\uFEFF?sep=([,;\t])(?:\r|\n|$)/i.exec(text)?.[1]
  return separators.find((s) => s === mark) ?? null
}

/** Share of rows that have the commonest number of columns, weighted a little by that number; 0 when it never splits. */
function scoreOf(text: string, separator: Separator): number {
  const parsed = parseRecords(text, separator)
  // A quote left open swallows everything after it; for the count of columns quotes are no loss.
  const { records } =
    parsed.openQuoteLine === null ? parsed : parseRecords(text.replaceAll('"', ''), separator)
  const rows = records.filter((row) => row.cells.some((cell) => cell.trim() !== ''))
  if (separator === ',' && rows.every((row) => row.cells.length === 1 || isLastCommaFirst(row))) return 0
  const counts = new Map<number, number>()
  for (const row of rows) counts.set(row.cells.length, (counts.get(row.cells.length) ?? 0) + 1)
  let best = 0
  for (const [columns, times] of counts) {
    if (columns > 1) best = Math.max(best, times / rows.length + Math.min(columns, 50) / 10_000)
  }
  return best
}

/** `Ash, Ann` alone on a line is one name, not two cells. */
function isLastCommaFirst(row: { readonly cells: readonly string[] }): boolean {
  const second = row.cells[1] ?? ''
  return row.cells.length === 2 && /^ \p{L}[\p{L}\p{M}’'. -]*$/u.test(second)
}
