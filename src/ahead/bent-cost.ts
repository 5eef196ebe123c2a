import { outsideWeight } from '#ahead/plan-value'

/**
 * Slope of what a gap costs when it rises: once up to the tolerance either way, ten times beyond. Its bends are rounded
 * off over `width` seconds to either side, so that exchanges do not come to rest on one that together with another would
 * lead on.
 */
export function slopeOfGap(gap: number, tolerance: number, width: number): number {
  if (gap < 0) return -slopeOfGap(-gap, tolerance, width)
  return (gap >= width ? 1 : gap / width) + outsideWeight * risen(gap - tolerance, width)
}

/** The same of a shortfall, which costs nothing below 0. */
export function slopeOfShort(short: number, tolerance: number, width: number): number {
  return short <= -width ? 0 : risen(short, width) + outsideWeight * risen(short - tolerance, width)
}

/** From 0 to 1 over a bend. */
function risen(beyond: number, width: number): number {
  if (beyond >= width) return 1
  return beyond <= -width ? 0 : (beyond + width) / (2 * width)
}
