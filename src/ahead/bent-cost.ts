import { outsideWeight } from '#ahead/plan-value'

/** Seconds nearer than this to a bend of the cost are on it. */
const near = 1e-7
const beyond = 1 + outsideWeight

/** Slope of what a gap costs, in seconds, when it rises: once up to the tolerance either way, ten times beyond. */
export function slopeOfGap(gap: number, tolerance: number): number {
  if (gap >= tolerance - near) return beyond
  if (gap >= -near) return 1
  return gap >= -tolerance - near ? -1 : -beyond
}

/** How far a gap can rise before that slope changes. */
export function roomOfGap(gap: number, tolerance: number): number {
  if (gap >= tolerance - near) return Number.POSITIVE_INFINITY
  if (gap >= -near) return tolerance - gap
  return gap >= -tolerance - near ? -gap : -tolerance - gap
}

/** The same of what a shortfall costs, which costs nothing below 0. */
export function slopeOfShort(short: number, tolerance: number): number {
  if (short >= tolerance - near) return beyond
  return short >= -near ? 1 : 0
}

export function roomOfShort(short: number, tolerance: number): number {
  if (short >= tolerance - near) return Number.POSITIVE_INFINITY
  return short >= -near ? tolerance - short : -short
}

/** Slope when it falls, as a cost of falling. */
export function fallOfShort(short: number, tolerance: number): number {
  if (short <= near) return 0
  return short <= tolerance + near ? -1 : -beyond
}

export function fallRoomOfShort(short: number, tolerance: number): number {
  if (short <= near) return Number.POSITIVE_INFINITY
  return short <= tolerance + near ? short : short - tolerance
}
