import { type LineUpValues, lineUpGoals } from '#lineup/line-up'

/** Whether one is better than another in the first goal in which they differ. */
export function isBetterLineUp(one: LineUpValues, other: LineUpValues): boolean {
  for (const goal of lineUpGoals) {
    const less = other[goal] - one[goal]
    if (Math.abs(less) > 1e-6 * Math.max(1, other[goal])) return less > 0
  }
  return false
}
