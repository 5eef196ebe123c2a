/** The chance of at most so many hits of so many tries, each a hit by the same chance, whatever the others are. */
export function binomialAtMost(hits: number, { tries, chance }: { tries: number; chance: number }): number {
  if (hits < 0) return 0
  if (hits >= tries || chance <= 0) return 1
  if (chance >= 1) return 0
  // By logarithms: the first term alone may be too small for a number.
  let term = tries * Math.log1p(-chance)
  const odds = Math.log(chance) - Math.log1p(-chance)
  let sum = Math.exp(term)
  for (let hit = 1; hit <= hits; hit++) {
    term += Math.log((tries - hit + 1) / hit) + odds
    sum += Math.exp(term)
  }
  return Math.min(1, sum)
}
