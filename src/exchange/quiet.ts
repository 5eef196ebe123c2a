/** Sums of thirds that should be nothing come out as 1e-13: no more than this is nothing. */
export const noise = 1e-9

export function quiet(value: number): number {
  return Math.abs(value) < noise ? 0 : value
}
