import type { Interval } from '#common/statistics/interval'
import { within95 } from '#common/statistics/wilson'

/** A loss on average, and within what the true one lies 95 times in 100; both ends are the mean where it is exact. */
export type MeanLoss = Interval & { readonly mean: number }

export type PairedLoss = {
  /** The difference between two rests of a term in which the same players came. */
  readonly add: (loss: number, weight: number) => void
  readonly sums: () => { readonly weight: number; readonly loss: number; readonly squares: number }
}

/** Sums losses of single draws. */
export function pairedLoss(): PairedLoss {
  let [weights, sum, squares] = [0, 0, 0]
  return {
    add: (loss, weight) => {
      weights += weight
      sum += weight * loss
      squares += weight * loss * loss
    },
    sums: () => ({ weight: weights, loss: sum, squares }),
  }
}

/**
 * The mean of losses. Its interval is that of the normal approximation to a mean of many differences in pairs: the same
 * players come in both, so that what differs is the loss and not chance.
 */
export function meanLoss(loss: PairedLoss, { isExact }: { readonly isExact: boolean }): MeanLoss {
  const { weight, loss: sum, squares } = loss.sums()
  if (weight <= 0) return { mean: 0, low: 0, high: 0 }
  const mean = sum / weight
  if (isExact) return { mean, low: mean, high: mean }
  const spread = weight > 1 ? Math.max(0, squares - sum * mean) / (weight - 1) : 0
  const reach = within95 * Math.sqrt(spread / weight)
  return { mean, low: mean - reach, high: mean + reach }
}
