import type { Seconds } from '#common/time'

/** Times, rising, that each of `count` players alike may come to, and what it is due. */
export type LevelsAsked = {
  readonly due: number
  readonly levels: readonly Seconds[]
  readonly count: number
}

/** No way to share out has a smaller sum of (due − part)² than `bound`; each level of a player costs so much beyond it. */
export type EvenLevels = {
  readonly bound: number
  /** `[asked][level]`: the sum of squares of any way to share out is `bound` plus these of the levels that it uses. */
  readonly beyond: readonly (readonly number[])[]
}

/**
 * The best price of a second, and what each level costs beyond what that price makes of it (Lagrange's bound: exact where
 * levels lie evenly). As the total is fixed, the beyonds measure every way to share out, not only the best.
 */
export function evenLevels(asked: readonly LevelsAsked[], total: Seconds): EvenLevels {
  const price = priceOf(asked, total)
  let bound = price * total
  const beyond = asked.map(({ due, levels, count }) => {
    const costs = levels.map((level) => (due - level) ** 2 - price * level)
    const least = Math.min(...costs)
    if (levels.length > 0) bound += count * least
    return costs.map((cost) => cost - least)
  })
  return { bound, beyond }
}

function priceOf(asked: readonly LevelsAsked[], total: Seconds): number {
  const slopes = asked.map(({ due, levels }) =>
    levels.slice(1).map((level, index) => level + (levels[index] ?? 0) - 2 * due),
  )
  const prices = [...new Set(slopes.flat())].sort((one, other) => one - other)
  const mostAt = (price: number) =>
    asked.reduce((sum, { levels, count }, index) => {
      const steps = (slopes[index] ?? []).filter((slope) => slope <= price + 1e-7).length
      return sum + count * (levels[steps] ?? 0)
    }, 0)
  let low = 0
  let high = prices.length - 1
  while (low < high) {
    const middle = (low + high) >> 1
    if (mostAt(prices[middle] ?? 0) >= total) high = middle
    else low = middle + 1
  }
  const price = prices[low] ?? 0
  const next = prices.find((own) => own > price + 1e-7)
  // Between two prices everybody's level is the only best one: more levels cost something, so more can go.
  return mostAt(price) === total && next !== undefined ? (price + next) / 2 : price
}
