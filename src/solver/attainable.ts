/**
 * Every total that can be made of some of these lengths, smallest first. Lengths and totals are whole numbers of the
 * same unit; `most` of each length may be used.
 */
export function attainableTotals(
  lengths: readonly { readonly length: number; readonly most: number }[],
): readonly number[] {
  const longest = lengths.reduce((sum, { length, most }) => sum + length * most, 0)
  const isReached = new Uint8Array(longest + 1)
  isReached[0] = 1
  for (const { length, most } of lengths) {
    for (let times = 0; times < most; times += 1)
      for (let total = longest; total >= length; total -= 1)
        if (isReached[total - length]) isReached[total] = 1
  }
  return [...isReached.keys()].filter((total) => isReached[total] === 1)
}
