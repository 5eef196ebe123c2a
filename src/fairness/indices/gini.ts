/**
 * Gini coefficient, the plain (biased) form: 0 when all are equal, at most (n − 1) ÷ n. Null for nobody; all zeros: 0.
 * Zeros count. Source: half the relative mean absolute difference; the default of R's `ineq` package.
 */
export function giniCoefficient(values: readonly number[]): number | null {
  if (values.length === 0) return null
  const sum = values.reduce((total, x) => total + x, 0)
  if (sum === 0) return 0
  const sorted = [...values].sort((a, b) => a - b)
  const count = sorted.length
  const weighted = sorted.reduce((total, x, index) => total + (2 * (index + 1) - count - 1) * x, 0)
  return weighted / (count * sum)
}

/** Times n ÷ (n − 1), so that one having everything is 1 in a squad of any size. Null under two players. */
export function unbiasedGini(values: readonly number[]): number | null {
  const gini = giniCoefficient(values)
  return gini === null || values.length < 2 ? null : (gini * values.length) / (values.length - 1)
}
