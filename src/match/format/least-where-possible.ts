import type { Seconds } from '#common/time'

/**
 * Promises cut down to what everybody can have, where a body promises a least time only where the numbers allow it: each
 * gets the same part of what it was promised. What was promised in whole periods stays whole.
 */
export function leastWherePossible(
  promised: readonly Seconds[],
  { capacity, periodSeconds }: { readonly capacity: Seconds; readonly periodSeconds: Seconds | null },
): readonly Seconds[] {
  const sum = promised.reduce((total, seconds) => total + seconds, 0)
  if (sum <= capacity) return promised
  const part = capacity / sum
  return promised.map((seconds) => {
    const unit = periodSeconds !== null && seconds % periodSeconds === 0 ? periodSeconds : 1
    return Math.floor((seconds * part) / unit) * unit
  })
}
