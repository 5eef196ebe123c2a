/**
 * Jain index (Σx)² ÷ (n·Σx²): 1 when all are equal, k/n when k of n share equally and the others have nothing.
 * Null for nobody. All zeros: 1, for all are equal.
 * Source: Jain, Chiu, Hawe, "A Quantitative Measure of Fairness and Discrimination", DEC-TR-301, 1984.
 */
export function jainIndex(values: readonly number[]): number | null {
  if (values.length === 0) return null
  const sum = values.reduce((total, x) => total + x, 0)
  const squares = values.reduce((total, x) => total + x * x, 0)
  return squares === 0 ? 1 : (sum * sum) / (values.length * squares)
}
