import type { LinearModel } from '#solver/linear-model'

/**
 * Adds the cost (total − target)² of a total to a linear model: `entries` make the total. It is exact at every
 * attainable total inside the window and too low, never too high, beyond it and in between; so the model's optimum is
 * a lower bound whatever the window, and exact where the totals of its solution lie inside.
 */
export function addSquareCost(
  model: LinearModel,
  cost: {
    readonly entries: readonly (readonly [number, number])[]
    /** The total is what the entries make, plus this. */
    readonly constant: number
    readonly target: number
    /** Smallest first, at least one. */
    readonly attainable: readonly number[]
    readonly window: { readonly from: number; readonly to: number }
  },
): void {
  const { attainable, target, window } = cost
  const square = (total: number) => (total - target) ** 2
  const inside = attainable.filter((total) => total >= window.from && total <= window.to)
  const points = inside.length >= 2 ? inside : attainable
  const [first = 0] = points
  const last = points.at(-1) ?? first
  const slopes = points.slice(1).map((total, index) => {
    const before = points[index] ?? total
    return { width: total - before, slope: (square(total) - square(before)) / (total - before) }
  })
  model.offset += square(first)
  const row: (readonly [number, number])[] = [...cost.entries]
  const below = first - (attainable[0] ?? first)
  const above = (attainable.at(-1) ?? last) - last
  const firstSlope = slopes[0]?.slope ?? 0
  const lastSlope = slopes.at(-1)?.slope ?? 0
  if (below > 0) row.push([model.addColumn({ cost: -firstSlope, upper: below, isWhole: false }), 1])
  for (const { width, slope } of slopes)
    row.push([model.addColumn({ cost: slope, upper: width, isWhole: false }), -1])
  if (above > 0) row.push([model.addColumn({ cost: lastSlope, upper: above, isWhole: false }), -1])
  const side = first - cost.constant
  model.addRow({ lower: side, upper: side }, row)
}
