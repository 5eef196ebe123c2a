import type { Proof } from '#common/proof'

/**
 * How far a plan of the weeks ahead is from the best that any plan could do, and what it leaves. It speaks of what is to
 * be expected: who comes is not known.
 */
export function sayAheadProof({ value, bound, proven }: Proof): string {
  const expected = 'In expectation, if everyone comes as often as so far,'
  const left = `${minutes(value)} of differences and of themes too short, over all players; each minute beyond the tolerance counts ten times`
  if (value < half)
    return `${expected} all differences close and every theme gets its part: no plan can do better.`
  if (proven) return `${expected} no plan can do better. It leaves ${left}.`
  if (bound < half) return `${expected} it leaves ${left}. How far that is from the best is not known yet.`
  const within = percent(value / bound - 1)
  return `${expected} this is within ${within} of the best that any plan could do. It leaves ${left}.`
}

const half = 0.5

function minutes(value: number): string {
  return Math.round(value) === 1 ? '1 minute' : `${Math.round(value)} minutes`
}

/** Rounded up, so that it is never said to be nearer than it is. */
function percent(part: number): string {
  return `${Math.max(1, Math.ceil(part * 100 - 1e-9))} %`
}
