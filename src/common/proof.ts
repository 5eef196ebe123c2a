/** A value reached, a lower bound that nothing under the same rules can beat, and whether the two meet. */
export type Proof = { readonly value: number; readonly bound: number; readonly proven: boolean }

/** Proven means: what is left between value and bound is a hair. */
export function proofOf(value: number, bound: number): Proof {
  const sound = Math.max(0, Math.min(value, bound))
  return { value, bound: sound, proven: value - sound <= 1e-6 * Math.max(1, value) }
}
