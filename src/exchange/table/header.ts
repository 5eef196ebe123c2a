import type { CsvRecord } from '#exchange/csv/parse-records'

/** For each field the words that people write above its column. */
export type ColumnWords<Field extends string> = Readonly<Record<Field, readonly string[]>>

/** `headerLine`: line of the header row, null when there is none. `columns`: the field of each column, null: not used. */
export type ColumnGuess<Field extends string> = {
  readonly headerLine: number | null
  readonly columns: readonly (Field | null)[]
}

/** A header stands near the top; a title and a line or two may stand above it. */
const rowsSearched = 12

/** The header row and its fields, or null when no row near the top has a column of one of the `naming` fields. */
export function findHeader<Field extends string>(
  rows: readonly CsvRecord[],
  words: ColumnWords<Field>,
  naming: readonly Field[],
): ColumnGuess<Field> | null {
  let best: { readonly guess: ColumnGuess<Field>; readonly known: number } | null = null
  for (const row of rows.slice(0, rowsSearched)) {
    const columns = fieldsOf(row.cells, words)
    const known = columns.filter((field) => field !== null).length
    if (columns.some((field) => field !== null && naming.includes(field)) && known > (best?.known ?? 0)) {
      best = { guess: { headerLine: row.line, columns }, known }
    }
  }
  return best?.guess ?? null
}

/** The field of each header cell; the first of two columns with the same field has it. */
export function fieldsOf<Field extends string>(
  cells: readonly string[],
  words: ColumnWords<Field>,
): readonly (Field | null)[] {
  const taken = new Set<Field>()
  return cells.map((cell) => {
    const key = headerKey(cell)
    const field = fieldsIn(words).find((f) => words[f].some((word) => headerKey(word) === key)) ?? null
    if (field === null || key === '' || taken.has(field)) return null
    taken.add(field)
    return field
  })
}

/** A header word without case, accents, spaces and punctuation, so that `E-Mail:` and `email` are one. */
export function headerKey(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/ł/g, 'l')
    .replace(/[^\p{L}\p{N}#]/gu, '')
}

function fieldsIn<Field extends string>(words: ColumnWords<Field>): readonly Field[] {
  return Object.keys(words) as Field[]
}

/** Widest row of the file: how many columns a person can map. */
export function columnCount(rows: readonly CsvRecord[]): number {
  return rows.reduce((most, row) => Math.max(most, row.cells.length), 0)
}
