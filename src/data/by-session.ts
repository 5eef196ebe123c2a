import 'server-only'

/** Rows of several sessions as values by session, in the order of the rows. */
export function groupBySession<Row extends { readonly sessionId: string }, Value>(
  rows: readonly Row[],
  toValue: (row: Row) => Value,
): ReadonlyMap<string, readonly Value[]> {
  const values = new Map<string, Value[]>()
  for (const row of rows) {
    const list = values.get(row.sessionId)
    if (list) list.push(toValue(row))
    else values.set(row.sessionId, [toValue(row)])
  }
  return values
}
