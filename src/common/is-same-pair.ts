/** Whether two pairs are of the same two, whoever comes first. */
export function isSamePair<One>(one: readonly [One, One], other: readonly [One, One]): boolean {
  return one.every((of) => other.includes(of))
}
