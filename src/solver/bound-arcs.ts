import { complete, isKeeping, keepAfter, type PricerData, tangentsOf } from '#solver/pricer-data'

const never = Number.POSITIVE_INFINITY

/** For each turn and arc, what no timetable with that arc costs less than, by the tangents of its totals. */
export function boundArcs(
  own: PricerData,
  wish: { readonly arcCosts: readonly Float64Array[]; readonly near: readonly number[] },
): readonly Float64Array[] {
  const tangents = tangentsOf(own, wish.near)
  complete(own, wish.arcCosts, tangents)
  const { seconds, keeps, completion, layers, nodes } = own
  const size = keeps.length
  let before = new Float64Array((nodes[0] ?? 1) * size).fill(never)
  before[0] = 0
  return layers.map(({ count, from, to, kind }, turn) => {
    const after = completion[turn + 1] as Float64Array
    const costs = wish.arcCosts[turn] as Float64Array
    const length = seconds[turn] as number
    const next = new Float64Array((nodes[turn + 1] ?? 0) * size).fill(never)
    const bounds = new Float64Array(count).fill(never)
    for (let arc = 0; arc < count; arc += 1) {
      const what = kind[arc] as number
      const cost = (costs[arc] as number) + (tangents.slope[what] as number) * length
      for (let keep = 0; keep < size; keep += 1) {
        const soFar = (before[(from[arc] as number) * size + keep] as number) + cost
        const later = isKeeping(what) ? keepAfter(own, keep, length) : keep
        if (later < 0 || soFar === never) continue
        const at = (to[arc] as number) * size + later
        if (soFar < (next[at] as number)) next[at] = soFar
        bounds[arc] = Math.min(bounds[arc] as number, soFar + (after[at] as number))
      }
    }
    before = next
    return bounds
  })
}
