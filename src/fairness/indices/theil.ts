/**
 * Theil T, mean of (x/μ)·ln(x/μ): 0 when all are equal, ln n when one has everything. A zero counts as a player with
 * nothing (0·ln 0 = 0), it does not vanish from the mean. Null for nobody; all zeros: 0.
 */
export function theilIndex(values: readonly number[]): number | null {
  if (values.length === 0) return null
  const mean = values.reduce((total, x) => total + x, 0) / values.length
  if (mean === 0) return 0
  const terms = values.map((x) => (x === 0 ? 0 : (x / mean) * Math.log(x / mean)))
  return terms.reduce((total, term) => total + term, 0) / values.length
}
