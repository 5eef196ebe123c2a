import { describe, expect, it } from 'vitest'
import { sayAheadProof } from '#ahead/say-ahead-proof'

describe('the sentence of a plan of the weeks ahead', () => {
  it.each([
    [{ value: 0, bound: 0, proven: true }, 'comes to 0 minutes of', 'nothing better is possible.'],
    [{ value: 53.5, bound: 53.5, proven: true }, 'comes to 54 minutes', 'no plan could come to less.'],
    // 104 is 4 % above 100, and 104.2 is said as 5: never nearer than it is.
    [
      { value: 104, bound: 100, proven: false },
      'comes to 104 minutes',
      'within 4 % of the best that any plan could do',
    ],
    [{ value: 104.2, bound: 100, proven: false }, 'comes to 104 minutes', 'within 5 % of the best'],
    [{ value: 1, bound: 0, proven: false }, 'comes to 1 minute of', 'was not found in this time.'],
  ])('says of %o what it comes to and how far it is from the best', (proof, left, best) => {
    const sentence = sayAheadProof(proof)
    expect(sentence).toMatch(/^In expectation, .*\.$/)
    expect(sentence).toContain(left)
    expect(sentence).toContain(best)
  })
})
