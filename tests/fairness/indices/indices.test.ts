import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { giniCoefficient, unbiasedGini } from '#fairness/indices/gini'
import { jainIndex } from '#fairness/indices/jain'
import { lorenzCurve } from '#fairness/indices/lorenz'
import { sharesOfDue } from '#fairness/indices/ratios'
import { theilIndex } from '#fairness/indices/theil'

const repeat = (...parts: readonly (readonly [value: number, times: number])[]) =>
  parts.flatMap(([value, times]) => Array.from({ length: times }, () => value))

// The example data of the R package ineq (A. Zeileis, C. Kleiber), with the output shipped as tests/Examples/ineq-Ex.Rout.save.
const ineqData = [541, 1463, 2445, 3438, 4437, 5401, 6392, 8304, 11904, 22261]
// The vector of the same example that ineqData majorises: money moved from more to fewer.
const ineqMajorised = [841, 2063, 2445, 3438, 4437, 5401, 6392, 8304, 11304, 21961]

describe('Jain index', () => {
  it.each([
    // R. Jain's example of shares 50, 30, 50 against fair shares 50, 10, 10, and the like: Lee Cheng-Ta,
    // "Fairness Index", 2006, slide 2, printed 0.77, 0.79, 0.71; in full by exact fractions.
    { values: [1, 3, 5], index: 81 / 105 },
    { values: [1, 4, 5], index: 100 / 126 },
    { values: [1, 2, 5], index: 64 / 90 },
    // From memory: DEC-TR-301's 100 persons, of whom 10 get 2 dollars each; or all get 20 cents.
    { values: repeat([2, 10], [0, 90]), index: 0.1 },
    { values: repeat([0.2, 100]), index: 1 },
    // 1 ÷ (1 + CV²) with the coefficient of variation 0.9169581829 of the data of R's ineq.
    { values: ineqData, index: 0.5432384361 },
  ])('of $values is $index', ({ values, index }) => {
    expect(jainIndex(values)).toBeCloseTo(index, 9)
  })

  it('is k ÷ n when k of n share equally, zeros counting (Jain, Chiu, Hawe 1984)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.nat(30), (k, others) => {
        expect(jainIndex(repeat([7, k], [0, others]))).toBeCloseTo(k / (k + others), 12)
      }),
    )
  })
})

describe('Gini coefficient', () => {
  it.each([
    // ineq-Ex.Rout.save prints 0.4620911; in full by exact fractions.
    { values: ineqData, gini: 0.46209113026762 },
    // phylotools' documentation of gini: 4/13.
    { values: [1, 3, 2, 1, 1, 1, 4], gini: 4 / 13 },
    // ineq-Ex.Rout.save: 0 and 0.4263158.
    { values: repeat([50, 10]), gini: 0 },
    { values: repeat([10, 9], [100, 1]), gini: 0.4263158 },
    // Input of DescTools' Gini.Rd, value by exact fractions.
    { values: [10, 10, 0, 0, 0], gini: 0.6 },
  ])('of $values is $gini', ({ values, gini }) => {
    expect(giniCoefficient(values)).toBeCloseTo(gini, 7)
  })

  it('times n ÷ (n − 1) says the same of two quite different squads', () => {
    // Damgaard & Weiner 2000, figure 2: 0.4444444 both times.
    expect(unbiasedGini(repeat([50 / 9, 9], [50, 1]))).toBeCloseTo(0.4444444, 7)
    expect(unbiasedGini(repeat([2, 5], [18, 5]))).toBeCloseTo(0.4444444, 7)
    // DescTools Gini.Rd, unbiased; by exact fractions.
    expect(unbiasedGini([10, 10, 0, 0, 0])).toBeCloseTo(0.75, 12)
    expect(unbiasedGini(ineqData)).toBeCloseTo(0.5134345892, 9)
  })
})

describe('Theil T', () => {
  it("of the data of R's ineq, by the package's formula", () => {
    expect(theilIndex(ineqData)).toBeCloseTo(0.3623412423, 9)
  })

  it('is the logarithm of n when one has everything: zeros do not vanish', () => {
    expect(theilIndex([12, 0, 0, 0])).toBeCloseTo(Math.log(4), 12)
  })
})

describe('Lorenz curve', () => {
  it("of the data of R's ineq", () => {
    const ordinates = [
      0, 0.008125, 0.030096, 0.066816, 0.118448, 0.185084, 0.266197, 0.362193, 0.486904, 0.66568, 1,
    ]
    const curve = lorenzCurve(ineqData)
    expect(curve).toHaveLength(11)
    curve.forEach((point, index) => {
      expect(point.players).toBeCloseTo(index / 10, 12)
      expect(point.share).toBeCloseTo(ordinates[index] as number, 6)
    })
  })
})

describe('every index', () => {
  it('falls when time moves from one who has more to one who has less (majorisation, example of ineq)', () => {
    expect(giniCoefficient(ineqMajorised)).toBeLessThan(giniCoefficient(ineqData) as number)
    expect(theilIndex(ineqMajorised)).toBeLessThan(theilIndex(ineqData) as number)
    expect(jainIndex(ineqMajorised)).toBeGreaterThan(jainIndex(ineqData) as number)
  })

  it('says nothing of nobody, and calls nothing for everybody even', () => {
    expect([jainIndex([]), giniCoefficient([]), theilIndex([]), unbiasedGini([3])]).toEqual([
      null,
      null,
      null,
      null,
    ])
    expect([jainIndex([0, 0]), giniCoefficient([0, 0]), theilIndex([0, 0])]).toEqual([1, 0, 0])
    expect(lorenzCurve([])).toEqual([])
  })

  it('keeps to its bounds whatever the unit', () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat(5000), { minLength: 1, maxLength: 16 }),
        fc.integer({ min: 2, max: 90 }),
        (values, unit) => {
          const n = values.length
          const scaled = values.map((value) => value * unit)
          expect(jainIndex(scaled)).toBeCloseTo(jainIndex(values) as number, 9)
          expect(jainIndex(values)).toBeGreaterThanOrEqual(1 / n - 1e-12)
          expect(jainIndex(values)).toBeLessThanOrEqual(1 + 1e-12)
          expect(giniCoefficient(values)).toBeLessThanOrEqual((n - 1) / n + 1e-12)
          expect(theilIndex(values)).toBeGreaterThanOrEqual(-1e-12)
          expect(theilIndex(values)).toBeLessThanOrEqual(Math.log(n) + 1e-12)
          // Twice the area between the curve and the diagonal, by trapezoids.
          const curve = lorenzCurve(values)
          const below = curve
            .slice(1)
            .reduce((sum, point, i) => sum + (point.share + (curve[i]?.share ?? 0)) / (2 * n), 0)
          expect(1 - 2 * below).toBeCloseTo(giniCoefficient(values) as number, 9)
        },
      ),
    )
  })
})

describe('shares of what was due', () => {
  it('leaves out who was due nothing and keeps who got nothing', () => {
    const figures = [
      { seconds: 50, dueSeconds: 50 },
      { seconds: 0, dueSeconds: 20 },
      { seconds: 0, dueSeconds: 0 },
    ]
    expect(sharesOfDue(figures)).toEqual([1, 0])
    expect(jainIndex(sharesOfDue(figures))).toBeCloseTo(1 / 2, 12)
  })
})
