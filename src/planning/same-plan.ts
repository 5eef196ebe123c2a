import type { PracticePlan } from '#planning/practice-plan'

/** Whether two plans are the same to whoever plays them, and what is proven of the one is no better than of the other. */
export function isSamePlan(own: PracticePlan, saved: PracticePlan): boolean {
  const played = ({ proof: _proof, ...rest }: PracticePlan) => inOneOrder(rest)
  const isBetterProven = own.proof.bound > saved.proof.bound + 1e-6 * Math.max(1, saved.proof.bound)
  return !isBetterProven && played(own) === played(saved)
}

/** A value as text, its keys in order of the alphabet: a database keeps no order of its own. */
function inOneOrder(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) =>
    part !== null && typeof part === 'object' && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([one], [other]) => (one < other ? -1 : 1)))
      : part,
  )
}
