import type { Proof } from '#common/proof'

/**
 * How far a plan of the weeks ahead is from the best that any plan could do, and what it leaves. It speaks of what is to
 * be expected: who comes is not known.
 */
export function sayAheadProof(proof: Proof): string {
  const left = sayAheadLeft(proof)
  return left === null ? sayAheadStanding(proof) : `${sayAheadStanding(proof)} ${left}`
}

/** How far a plan is from the best, alone. */
export function sayAheadStanding({ value, bound, proven }: Proof): string {
  const expected = 'In expectation, if everyone comes as often as so far,'
  if (value < half)
    return `${expected} all differences close and every theme gets its part: no plan can do better.`
  if (proven) return `${expected} no plan can do better.`
  if (bound < half) return `${expected} how far this is from the best is not known yet.`
  return `${expected} this is within ${percent(value / bound - 1)} of the best that any plan could do.`
}

/** What a plan leaves as the planner counts it; null: nothing. */
export function sayAheadLeft({ value }: Pick<Proof, 'value'>): string | null {
  return value < half
    ? null
    : `It leaves ${minutes(value)} of differences and of themes too short, over all players; each minute beyond the tolerance counts ten times.`
}

const half = 0.5

function minutes(value: number): string {
  return Math.round(value) === 1 ? '1 minute' : `${Math.round(value).toLocaleString('en-GB')} minutes`
}

/** Rounded up, so that it is never said to be nearer than it is. */
function percent(part: number): string {
  return `${Math.max(1, Math.ceil(part * 100 - 1e-9))} %`
}
