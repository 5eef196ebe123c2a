import type { Interval } from '#common/time'

/** Places in a list, from 0, of two intervals of one owner that overlap. */
export type Overlap = { readonly later: number; readonly earlier: number }

/**
 * Finds the intervals that begin before an earlier one of the same owner has ended, each once. Touching is not
 * overlapping, and an interval without length overlaps nothing. In the order of the list.
 */
export function findOverlaps(intervals: readonly (Interval & { readonly of: string })[]): readonly Overlap[] {
  const overlaps: Overlap[] = []
  const reaching = new Map<string, { readonly to: number; readonly index: number }>()
  const inTime = intervals
    .map((interval, index) => ({ ...interval, index }))
    .filter((interval) => interval.from < interval.to)
    .sort((a, b) => a.from - b.from || a.index - b.index)
  for (const { of, from, to, index } of inTime) {
    const furthest = reaching.get(of)
    if (furthest && from < furthest.to) overlaps.push({ later: index, earlier: furthest.index })
    if (!furthest || to > furthest.to) reaching.set(of, { to, index })
  }
  return overlaps.sort((a, b) => a.later - b.later)
}
