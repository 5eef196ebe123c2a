/**
 * How many of some players can be on at once when pairs are kept apart: the largest set without a pair. Group by group
 * of players that pairs join, each tried out in full; groups of pairs are small.
 */
export function mostOnTogether(
  players: readonly number[],
  pairs: readonly (readonly [number, number])[],
): number {
  const here = new Set(players)
  const partners = new Map<number, Set<number>>()
  for (const [one, other] of pairs) {
    if (!here.has(one) || !here.has(other) || one === other) continue
    partners.set(one, (partners.get(one) ?? new Set()).add(other))
    partners.set(other, (partners.get(other) ?? new Set()).add(one))
  }
  const free = players.filter((player) => !partners.has(player)).length
  return free + largestFree([...partners.keys()], partners)
}

/** Whoever has most partners is either off, or on and all of those off; who has none of them left is on. */
function largestFree(players: readonly number[], partners: ReadonlyMap<number, ReadonlySet<number>>): number {
  const degree = (player: number) => players.filter((other) => partners.get(player)?.has(other)).length
  const busiest = players.reduce<number | null>(
    (most, player) => (most === null || degree(player) > degree(most) ? player : most),
    null,
  )
  if (busiest === null || degree(busiest) === 0) return players.length
  const others = players.filter((player) => player !== busiest)
  if (degree(busiest) === 1) {
    const partner = others.find((other) => partners.get(busiest)?.has(other))
    return (
      1 +
      largestFree(
        others.filter((player) => player !== partner),
        partners,
      )
    )
  }
  return Math.max(
    largestFree(others, partners),
    1 +
      largestFree(
        others.filter((player) => !partners.get(busiest)?.has(player)),
        partners,
      ),
  )
}
