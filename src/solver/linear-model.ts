/** A linear model in the making: columns with costs and bounds, rows over them. Indexes from 0. */
export class LinearModel {
  readonly costs: number[] = []
  readonly lower: number[] = []
  readonly upper: number[] = []
  readonly isWhole: boolean[] = []
  readonly rowLower: number[] = []
  readonly rowUpper: number[] = []
  readonly rowStarts: number[] = [0]
  readonly entryColumns: number[] = []
  readonly entryValues: number[] = []
  offset = 0

  /** Returns the new column's index. */
  addColumn(column: { cost?: number; lower?: number; upper: number; isWhole: boolean }): number {
    this.costs.push(column.cost ?? 0)
    this.lower.push(column.lower ?? 0)
    this.upper.push(column.upper)
    this.isWhole.push(column.isWhole)
    return this.costs.length - 1
  }

  /** Entries of one column may come more than once; they are added up. A row without entries is not taken in. */
  addRow(bounds: { lower?: number; upper?: number }, entries: Iterable<readonly [number, number]>): void {
    const sums = new Map<number, number>()
    for (const [column, value] of entries) sums.set(column, (sums.get(column) ?? 0) + value)
    const before = this.entryColumns.length
    for (const [column, value] of sums) {
      if (value === 0) continue
      this.entryColumns.push(column)
      this.entryValues.push(value)
    }
    // A row that no column can fill says that the model has no solution: it must not be lost.
    if (this.entryColumns.length === before && !excludesZero(bounds)) return
    this.rowLower.push(bounds.lower ?? Number.NEGATIVE_INFINITY)
    this.rowUpper.push(bounds.upper ?? Number.POSITIVE_INFINITY)
    this.rowStarts.push(this.entryColumns.length)
  }

  get columns(): number {
    return this.costs.length
  }

  get rows(): number {
    return this.rowLower.length
  }
}

function excludesZero({ lower = 0, upper = 0 }: { lower?: number; upper?: number }): boolean {
  return lower > 0 || upper < 0
}
