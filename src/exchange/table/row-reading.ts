/** What became of one row of a file: an entry, or why there is none. */
export type RowReading<Entry> = {
  readonly line: number
  readonly cells: readonly string[]
  readonly result:
    | { readonly kind: 'understood'; readonly entry: Entry }
    /** Nothing for the book in it: a total, a number without a name. */
    | { readonly kind: 'passedOver'; readonly why: string }
    | { readonly kind: 'problem'; readonly problems: readonly string[] }
}

/** The cell that a field has in a row; empty when no column has the field. */
export function cellOf<Field extends string>(
  row: { readonly cells: readonly string[] },
  columns: readonly (Field | null)[],
  field: Field,
): string {
  const at = columns.indexOf(field)
  return at < 0 ? '' : (row.cells[at] ?? '')
}
