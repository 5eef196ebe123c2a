/**
 * P-values adjusted for their number, in the order given: whoever takes all up to q for findings is, on average, wrong in
 * a part of q of them at most. Holds where the values are independent, or depend on each other positively.
 * Source: Y. Benjamini & Y. Hochberg, "Controlling the false discovery rate", J. R. Stat. Soc. B 57 (1995) 289-300.
 */
export function adjustedByBenjaminiHochberg(pValues: readonly number[]): readonly number[] {
  const count = pValues.length
  const order = pValues.map((_, at) => at).sort((a, b) => (pValues[b] ?? 0) - (pValues[a] ?? 0))
  const adjusted = [...pValues]
  let lowest = 1
  // From the largest down: a smaller value is never adjusted to more than a larger one.
  order.forEach((at, place) => {
    const rank = count - place
    lowest = Math.min(lowest, ((pValues[at] ?? 1) * count) / rank)
    adjusted[at] = lowest
  })
  return adjusted
}
