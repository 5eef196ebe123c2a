/**
 * Iterative proportional fitting of a table to row and column totals: rows and columns are scaled in turn until both
 * fit. Cells of zero stay zero. Source: W. E. Deming & F. F. Stephan, Ann. Math. Statist. 11 (1940) 427-444.
 * @throws when it has not come within 1e-12 of the totals after 100,000 rounds.
 */
export function fitTable(
  seed: readonly (readonly number[])[],
  totals: { readonly rows: readonly number[]; readonly columns: readonly number[] },
): number[][] {
  let table = seed.map((row) => [...row])
  const most = Math.max(...totals.rows, ...totals.columns)
  for (let round = 0; round < 100_000; round += 1) {
    table = table.map((row, r) => scaled(row, (totals.rows[r] ?? 0) / sum(row)))
    const columns = totals.columns.map((total, c) => total / sum(table.map((row) => row[c] ?? 0)))
    table = table.map((row) => row.map((cell, c) => (cell === 0 ? 0 : cell * (columns[c] ?? 0))))
    const furthest = Math.max(...table.map((row, r) => Math.abs(sum(row) - (totals.rows[r] ?? 0))))
    if (furthest <= 1e-12 * most) return table
  }
  throw new Error('The table does not settle.')
}

function scaled(row: readonly number[], factor: number): number[] {
  return row.map((cell) => (cell === 0 ? 0 : cell * factor))
}

function sum(cells: readonly number[]): number {
  return cells.reduce((all, cell) => all + cell, 0)
}
