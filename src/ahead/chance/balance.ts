/** Lists of one practice, by place among those who came; only the first `count` places of each count. */
export type Balancing = {
  readonly count: number
  readonly wish: Float64Array
  /** What each may get: `low` at most 0, `high` at least 0, so that nothing for anybody is always allowed. */
  readonly low: Float64Array
  readonly high: Float64Array
}

/** Seconds that a sum may be off by. */
const hair = 1e-9

/**
 * Makes of wishes what adds up to 0 and keeps everyone's limits, as near to the wishes as can be in squares: the same is
 * taken from everyone, but nobody is taken past a limit. Written into `wish`.
 */
export function balance({ count, wish, low, high }: Balancing): void {
  let [least, most] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
  let taken = 0
  for (let turn = 0; turn < 100; turn++) {
    let [sum, free] = [0, 0]
    for (let at = 0; at < count; at++) {
      const own = (wish[at] ?? 0) - taken
      if (own <= (low[at] ?? 0)) sum += low[at] ?? 0
      else if (own >= (high[at] ?? 0)) sum += high[at] ?? 0
      else {
        sum += own
        free++
      }
    }
    if (Math.abs(sum) <= hair) break
    if (sum > 0) least = taken
    else most = taken
    // Newton's step is right at once where the free stay free; where it leaves what is known, half of that.
    let next = free > 0 ? taken + sum / free : Number.NaN
    if (!(next > least && next < most)) {
      if (least === Number.NEGATIVE_INFINITY) least = lowest(count, wish, high)
      if (most === Number.POSITIVE_INFINITY) most = highest(count, wish, low)
      next = (least + most) / 2
    }
    if (next === taken) break
    taken = next
  }
  for (let at = 0; at < count; at++)
    wish[at] = Math.min(high[at] ?? 0, Math.max(low[at] ?? 0, (wish[at] ?? 0) - taken))
}

/** Taking so little leaves everyone at its most. */
function lowest(count: number, wish: Float64Array, high: Float64Array): number {
  let found = Number.POSITIVE_INFINITY
  for (let at = 0; at < count; at++) found = Math.min(found, (wish[at] ?? 0) - (high[at] ?? 0))
  return found
}

/** Taking so much leaves everyone at its least. */
function highest(count: number, wish: Float64Array, low: Float64Array): number {
  let found = Number.NEGATIVE_INFINITY
  for (let at = 0; at < count; at++) found = Math.max(found, (wish[at] ?? 0) - (low[at] ?? 0))
  return found
}
