import { InvariantError } from '#common/result'
import { secondsInMinute } from '#common/time'

/** Whole seats given out by weight; in the order of the weights, and always adding up to `seats`. */
export type Apportionment = readonly number[]

type Question = {
  /** Not negative, finite; at least one above zero when there are seats. */
  readonly weights: readonly number[]
  readonly seats: number
}

// Weights may be decimals such as 0.1, so equal claims may come out a hair apart.
const hair = 1e-9

/**
 * Largest remainder with the Hare quota: each gets the whole part of its quota, the seats left go to the largest
 * remainders. Never a seat away from the quota. Ties: the larger weight, then the earlier.
 * @throws InvariantError on weights or seats that cannot be apportioned.
 */
export function apportionByLargestRemainder({ weights, seats }: Question): Apportionment {
  const total = checkedTotal({ weights, seats })
  if (seats === 0) return weights.map(() => 0)
  return giveByRemainder(
    weights.map((weight) => (weight * seats) / total),
    seats,
  )
}

/**
 * Sainte-Laguë (Webster): each next seat goes to the largest weight ÷ (2 × seats so far + 1). One seat more never takes
 * one away from anyone. Ties: the larger weight, then the earlier.
 * @throws InvariantError on weights or seats that cannot be apportioned.
 */
export function apportionBySainteLague({ weights, seats }: Question): Apportionment {
  checkedTotal({ weights, seats })
  const given = weights.map(() => 0)
  const at = (list: readonly number[], index: number) => list[index] as number
  for (let seat = 0; seat < seats; seat += 1) {
    let best = 0
    for (let other = 1; other < weights.length; other += 1) {
      // Cross-multiplied, so that whole weights are compared exactly.
      const claim = at(weights, other) * (2 * at(given, best) + 1)
      const bestClaim = at(weights, best) * (2 * at(given, other) + 1)
      const isTie = Math.abs(claim - bestClaim) <= hair * 1e-3 * bestClaim
      if (isTie ? at(weights, other) > at(weights, best) : claim > bestClaim) best = other
    }
    given[best] = at(given, best) + 1
  }
  return given
}

/**
 * Whole minutes of rows of seconds, adding up to the rounded minutes of their sum: each row is off by less than a minute.
 * Rows may be negative. Minutes left over go to the largest remainders; ties: the larger row, then the earlier.
 */
export function roundToMinutes(rowsOfSeconds: readonly number[]): readonly number[] {
  const total = Math.round(rowsOfSeconds.reduce((sum, seconds) => sum + seconds, 0) / secondsInMinute)
  return giveByRemainder(
    rowsOfSeconds.map((seconds) => seconds / secondsInMinute),
    total,
  )
}

function giveByRemainder(quotas: readonly number[], total: number): Apportionment {
  const whole = quotas.map((quota) => Math.floor(quota + hair))
  const left = total - whole.reduce((sum, one) => sum + one, 0)
  const byClaim = quotas
    .map((quota, index) => ({
      index,
      quota,
      remainder: Math.round((quota - (whole[index] as number)) / hair),
    }))
    .sort((a, b) => b.remainder - a.remainder || b.quota - a.quota || a.index - b.index)
  const lucky = new Set(byClaim.slice(0, left).map((claim) => claim.index))
  return whole.map((one, index) => one + (lucky.has(index) ? 1 : 0))
}

function checkedTotal({ weights, seats }: Question): number {
  const total = weights.reduce((sum, weight) => sum + weight, 0)
  const isSound = weights.every((weight) => Number.isFinite(weight) && weight >= 0)
  if (
    !isSound ||
    !Number.isSafeInteger(seats) ||
    seats < 0 ||
    (seats > 0 && !(total > 0 && Number.isFinite(total)))
  ) {
    throw new InvariantError('These weights cannot share out these seats.', { weights, seats })
  }
  return total
}
