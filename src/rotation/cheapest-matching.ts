/**
 * The cheapest way to give each of n rows a column of its own: `costs` is n × n, row by row, finite.
 * Returns the column of each row. The Hungarian method with potentials, O(n³): H. W. Kuhn, "The Hungarian method for
 * the assignment problem", Naval Res. Logist. Quart. 2 (1955) 83-97; in the shortest-path form of later textbooks.
 */
export function cheapestMatching(size: number, costs: Float64Array): Int32Array {
  const rowPotential = new Float64Array(size + 1)
  const columnPotential = new Float64Array(size + 1)
  const rowOf = new Int32Array(size + 1)
  const way = new Int32Array(size + 1)
  for (let row = 1; row <= size; row += 1) {
    rowOf[0] = row
    let last = augment(row)
    while (last > 0) {
      const before = way[last] as number
      rowOf[last] = rowOf[before] as number
      last = before
    }
  }
  const columns = new Int32Array(size)
  for (let column = 1; column <= size; column += 1) columns[(rowOf[column] as number) - 1] = column - 1
  return columns

  function augment(start: number): number {
    const slack = new Float64Array(size + 1).fill(Number.POSITIVE_INFINITY)
    const isDone = new Uint8Array(size + 1)
    let at = 0
    rowOf[0] = start
    do {
      isDone[at] = 1
      const row = rowOf[at] as number
      let step = Number.POSITIVE_INFINITY
      let next = 0
      for (let column = 1; column <= size; column += 1) {
        if (isDone[column]) continue
        const reduced =
          (costs[(row - 1) * size + column - 1] as number) -
          (rowPotential[row] as number) -
          (columnPotential[column] as number)
        if (reduced < (slack[column] as number)) {
          slack[column] = reduced
          way[column] = at
        }
        if ((slack[column] as number) < step) {
          step = slack[column] as number
          next = column
        }
      }
      for (let column = 0; column <= size; column += 1) {
        if (isDone[column]) {
          rowPotential[rowOf[column] as number] = (rowPotential[rowOf[column] as number] as number) + step
          columnPotential[column] = (columnPotential[column] as number) - step
        } else slack[column] = (slack[column] as number) - step
      }
      at = next
    } while (rowOf[at] !== 0)
    return at
  }
}
