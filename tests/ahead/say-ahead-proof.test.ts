import { describe, expect, it } from 'vitest'
import { sayAheadLeft, sayAheadProof, sayAheadStanding } from '#ahead/say-ahead-proof'

describe('the sentence of a plan of the weeks ahead', () => {
  it.each([
    [{ value: 0, bound: 0, proven: true }, /all differences close .*: no plan can do better\.$/],
    [{ value: 53.5, bound: 53.5, proven: true }, /no plan can do better\. It leaves 54 minutes of/],
    // 104 is 4 % above 100, and 104.2 is said as 5: never nearer than it is.
    [{ value: 104, bound: 100, proven: false }, /within 4 % of the best .* It leaves 104 minutes/],
    [{ value: 104.2, bound: 100, proven: false }, /within 5 % of the best/],
    [{ value: 1, bound: 0, proven: false }, /is not known yet\. It leaves 1 minute of/],
    [{ value: 15042, bound: 15042, proven: true }, /It leaves 15,042 minutes of/],
  ])('says of %o how far from the best it is and what it leaves', (proof, said) => {
    expect(sayAheadProof(proof)).toMatch(said)
    expect(sayAheadProof(proof)).toBe(
      [sayAheadStanding(proof), sayAheadLeft(proof)].filter((part) => part !== null).join(' '),
    )
    expect(sayAheadStanding(proof)).not.toMatch(/minute/)
    expect(sayAheadProof(proof)).toMatch(/^In expectation, if everyone comes as often as so far, /)
  })
})
