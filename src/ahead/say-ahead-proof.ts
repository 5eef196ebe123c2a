import type { Proof } from '#common/proof'

/**
 * What a plan of the weeks ahead is worth, and how far from the best that any plan could do, in one sentence. It speaks
 * of what is to be expected: who comes is not known.
 */
export function sayAheadProof({ value, bound, proven }: Proof): string {
  const left = `In expectation, if everyone comes as often as so far, this plan comes to ${minutes(value)} of differences and of themes too short, over all players, with each minute beyond the tolerance counted ten times`
  if (value < half) return `${left}: nothing better is possible.`
  if (proven) return `${left}; no plan could come to less.`
  if (bound < half) return `${left}; how much less another plan could come to was not found in this time.`
  return `${left}; that is within ${percent(value / bound - 1)} of the best that any plan could do in expectation.`
}

const half = 0.5

function minutes(value: number): string {
  const whole = Math.round(value)
  return `${whole} ${whole === 1 ? 'minute' : 'minutes'}`
}

/** Rounded up, so that it is never said to be nearer than it is. */
function percent(part: number): string {
  return `${Math.max(1, Math.ceil(part * 100 - 1e-9))} %`
}
