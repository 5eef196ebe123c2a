import { type LineUpValues, lineUpGoals } from '#lineup/line-up'

/** Whether two values of a goal are the same but for what computers lose. */
export function isSameValue(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-6 * Math.max(1, Math.abs(one), Math.abs(other))
}

/** Below 0: the first is better in the first goal in which they differ; 0: they are the same in all. */
export function compareLineUps(one: LineUpValues, other: LineUpValues): number {
  const goal = lineUpGoals.find((own) => !isSameValue(one[own], other[own]))
  return goal === undefined ? 0 : one[goal] - other[goal]
}

/** Whether one is better than another in the first goal in which they differ. */
export function isBetterLineUp(one: LineUpValues, other: LineUpValues): boolean {
  return compareLineUps(one, other) < 0
}
