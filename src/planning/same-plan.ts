import { inOneOrder } from '#common/in-one-order'
import type { PracticePlan } from '#planning/practice-plan'

/** Whether two plans are the same to whoever plays them, and what is proven of the one is no better than of the other. */
export function isSamePlan(own: PracticePlan, saved: PracticePlan): boolean {
  const played = ({ proof: _proof, ...rest }: PracticePlan) => inOneOrder(rest)
  const isBetterProven = own.proof.bound > saved.proof.bound + 1e-6 * Math.max(1, saved.proof.bound)
  return !isBetterProven && played(own) === played(saved)
}
