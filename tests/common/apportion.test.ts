import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { apportionByLargestRemainder, apportionBySainteLague, roundToMinutes } from '#common/apportion'
import { InvariantError } from '#common/result'

// First census of the United States, 1790, populations as Congress had them. Seats of Hamilton's bill (vetoed, 120):
// COMAP, For All Practical Purposes, 10th edition, Example 6, Table 14.5. Webster's 105: Math. Association of America,
// Convergence, "Jefferson's Method" (Hamilton's 105 is Jefferson's but for Virginia −1, Delaware +1), and Webster's is equal.
const census1790 = [
  { state: 'CT', population: 236841, hamilton120: 8, webster105: 7 },
  { state: 'DE', population: 55540, hamilton120: 2, webster105: 2 },
  { state: 'GA', population: 70835, hamilton120: 2, webster105: 2 },
  { state: 'KY', population: 68705, hamilton120: 2, webster105: 2 },
  { state: 'MD', population: 278514, hamilton120: 9, webster105: 8 },
  { state: 'MA', population: 475327, hamilton120: 16, webster105: 14 },
  { state: 'NH', population: 141822, hamilton120: 5, webster105: 4 },
  { state: 'NJ', population: 179570, hamilton120: 6, webster105: 5 },
  { state: 'NY', population: 331589, hamilton120: 11, webster105: 10 },
  { state: 'NC', population: 353523, hamilton120: 12, webster105: 10 },
  { state: 'PA', population: 432879, hamilton120: 14, webster105: 13 },
  { state: 'RI', population: 68446, hamilton120: 2, webster105: 2 },
  { state: 'SC', population: 206236, hamilton120: 7, webster105: 6 },
  { state: 'VT', population: 85533, hamilton120: 3, webster105: 2 },
  { state: 'VA', population: 630560, hamilton120: 21, webster105: 18 },
]
const populations = census1790.map((row) => row.population)

describe('largest remainder with the Hare quota', () => {
  it.each([
    // From memory: encyclopaedia article "Largest remainder method"; done again with exact fractions.
    { weights: [47000, 16000, 15800, 12000, 6100, 3100], seats: 10, given: [5, 2, 1, 1, 1, 0] },
    // Weights from the electowiki page on D'Hondt; this column done with exact fractions.
    { weights: [340000, 280000, 160000, 60000, 15000], seats: 7, given: [3, 2, 1, 1, 0] },
    // Weights from R's nzelect package, allocate_seats; this column done with exact fractions.
    { weights: [53000, 24000, 23000], seats: 7, given: [4, 2, 1] },
    // archipel-des-libertes.fr, "largest remainders method": Hare quota 232.5.
    { weights: [500, 300, 110, 20], seats: 4, given: [2, 1, 1, 0] },
  ])('gives $given for $seats seats', ({ weights, seats, given }) => {
    expect(apportionByLargestRemainder({ weights, seats })).toEqual(given)
  })

  it('gives the seats of the bill of 1792 from the census of 1790', () => {
    expect(apportionByLargestRemainder({ weights: populations, seats: 120 })).toEqual(
      census1790.map((row) => row.hamilton120),
    )
    expect(apportionByLargestRemainder({ weights: populations, seats: 105 })).toEqual(
      census1790.map((row) => row.webster105),
    )
  })

  it('never strays a seat from the quota, and adds up', () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat(10_000), { minLength: 1, maxLength: 12 }),
        fc.nat(300),
        (weights, seats) => {
          const total = weights.reduce((sum, weight) => sum + weight, 0)
          fc.pre(total > 0)
          const given = apportionByLargestRemainder({ weights, seats })
          expect(given.reduce((sum, one) => sum + one, 0)).toBe(seats)
          given.forEach((one, index) => {
            const quota = ((weights[index] as number) * seats) / total
            expect(Math.abs(one - quota)).toBeLessThan(1)
          })
        },
      ),
    )
  })

  it('gives a tie to the larger weight, then to the earlier', () => {
    expect(apportionByLargestRemainder({ weights: [1, 1], seats: 1 })).toEqual([1, 0])
    // Quotas 0.5 and 1.5: equal remainders.
    expect(apportionByLargestRemainder({ weights: [1, 3], seats: 2 })).toEqual([0, 2])
  })

  it('reads decimal weights as what they are meant to be', () => {
    expect(apportionByLargestRemainder({ weights: [0.29, 0.71], seats: 100 })).toEqual([29, 71])
  })
})

describe('Sainte-Laguë', () => {
  it.each([
    // "Should return 3, 2, 2": R's nzelect package, allocate_seats.
    { weights: [53000, 24000, 23000], seats: 7, given: [3, 2, 2] },
    // From memory: encyclopaedia article "Sainte-Laguë method"; done again with exact fractions.
    { weights: [100000, 80000, 30000, 20000], seats: 8, given: [3, 3, 1, 1] },
    // Exact fractions.
    { weights: [47000, 16000, 15800, 12000, 6100, 3100], seats: 10, given: [4, 2, 2, 1, 1, 0] },
    { weights: [340000, 280000, 160000, 60000, 15000], seats: 7, given: [3, 2, 1, 1, 0] },
    // Party votes of New Zealand 2014 (R's nzelect package) over the 120 seats; the result as declared, from memory.
    {
      weights: [1131501, 604535, 257359, 208300, 31849, 16689, 5286],
      seats: 120,
      given: [60, 32, 14, 11, 2, 1, 0],
    },
  ])('gives $given for $seats seats', ({ weights, seats, given }) => {
    expect(apportionBySainteLague({ weights, seats })).toEqual(given)
  })

  it("gives Webster's 105 seats from the census of 1790, and at 120 agrees with the vetoed bill", () => {
    expect(apportionBySainteLague({ weights: populations, seats: 105 })).toEqual(
      census1790.map((row) => row.webster105),
    )
    expect(apportionBySainteLague({ weights: populations, seats: 120 })).toEqual(
      census1790.map((row) => row.hamilton120),
    )
  })

  it('never takes a seat away when there is one more', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(1000), { minLength: 1, maxLength: 8 }), fc.nat(60), (weights, seats) => {
        fc.pre(weights.some((weight) => weight > 0))
        const fewer = apportionBySainteLague({ weights, seats })
        const more = apportionBySainteLague({ weights, seats: seats + 1 })
        expect(more.reduce((sum, one) => sum + one, 0)).toBe(seats + 1)
        more.forEach((one, index) => {
          expect(one).toBeGreaterThanOrEqual(fewer[index] as number)
        })
      }),
    )
  })

  it('gives a tie to the larger weight, then to the earlier, decimals included', () => {
    expect(apportionBySainteLague({ weights: [1, 1, 1], seats: 2 })).toEqual([1, 1, 0])
    // 0.3 ÷ 3 and 0.1 ÷ 1 are equal claims.
    expect(apportionBySainteLague({ weights: [0.1, 0.3], seats: 2 })).toEqual([0, 2])
  })
})

describe('weights and seats that cannot be shared out', () => {
  it.each([
    { weights: [1, -1], seats: 1 },
    { weights: [0, 0], seats: 1 },
    { weights: [], seats: 1 },
    { weights: [1], seats: 1.5 },
    { weights: [1], seats: -1 },
    { weights: [Number.NaN], seats: 1 },
  ])('$weights for $seats seats is a fault of the program', (question) => {
    expect(() => apportionByLargestRemainder(question)).toThrow(InvariantError)
    expect(() => apportionBySainteLague(question)).toThrow(InvariantError)
  })

  it('gives nobody anything of no seats', () => {
    expect(apportionByLargestRemainder({ weights: [0, 0], seats: 0 })).toEqual([0, 0])
    expect(apportionBySainteLague({ weights: [], seats: 0 })).toEqual([])
  })
})

describe('minutes that add up', () => {
  it('shows rows that add up to their total', () => {
    // 3 × 100 s are 5 minutes; each alone would round to 2.
    expect(roundToMinutes([100, 100, 100])).toEqual([2, 2, 1])
    expect(roundToMinutes([-90, 90])).toEqual([-2, 2])
    expect(roundToMinutes([])).toEqual([])
  })

  it('adds up for any rows, each within a minute of itself', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -9000, max: 9000 }), { maxLength: 12 }), (rows) => {
        const minutes = roundToMinutes(rows)
        const total = rows.reduce((sum, seconds) => sum + seconds, 0)
        expect(minutes.reduce((sum, one) => sum + one, 0)).toBe(Math.round(total / 60) + 0)
        rows.forEach((seconds, index) => {
          expect(Math.abs((minutes[index] as number) - seconds / 60)).toBeLessThan(1)
        })
      }),
    )
  })
})
