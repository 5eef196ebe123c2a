import { describe, expect, it } from 'vitest'
import { wilsonInterval, within95 } from '#common/statistics/wilson'
import { binomialAtMost } from '../../support/binomial'
import { clopperPearsonInterval } from '../../support/clopper-pearson'

/** Of the normal distribution, 90 in 100 on both sides. */
const within90 = 1.6448536269514722

/**
 * 37/43 and 42/43: the counts of the example of `BinomCI` in the R package DescTools. 12/100: the counts of `ci.prop` in
 * the R package statpsych. All figures are those of `binomtest(…).proportion_ci` in SciPy 1.17.1.
 */
const published: readonly (readonly [number, number, number, number, number, number])[] = [
  [37, 43, 0.7273641, 0.9344428, 0.7206752, 0.9470234],
  [42, 43, 0.8794101, 0.9958829, 0.8771095, 0.9994114],
  [12, 100, 0.0699941, 0.198121, 0.0635689, 0.2002357],
  [4, 20, 0.0806577, 0.4160174, 0.057334, 0.436614],
  [7, 50, 0.0695083, 0.2618619, 0.0581917, 0.267396],
  [19, 25, 0.5657032, 0.8850369, 0.548712, 0.9064356],
  [50, 100, 0.4038315, 0.5961685, 0.3983211, 0.6016789],
  [0, 10, 0, 0.2775328, 0, 0.3084971],
  [10, 10, 0.7224672, 1, 0.6915029, 1],
  [0, 4, 0, 0.4898908, 0, 0.6023646],
  [1, 8, 0.0224175, 0.4708882, 0.0031597, 0.5265097],
]

describe.each(published)('%i of %i', (hits, tries, wilsonLow, wilsonHigh, exactLow, exactHigh) => {
  it('has the interval of Wilson, without correction', () => {
    const { low, high } = wilsonInterval({ hits, tries })
    expect(low).toBeCloseTo(wilsonLow, 7)
    expect(high).toBeCloseTo(wilsonHigh, 7)
  })

  it('has the interval of Clopper and Pearson', () => {
    const { low, high } = clopperPearsonInterval({ hits, tries })
    expect(low).toBeCloseTo(exactLow, 6)
    expect(high).toBeCloseTo(exactHigh, 6)
  })
})

it('nine in ten of 4 of 20 lie as the NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1, has them (from memory)', () => {
  const { low, high } = clopperPearsonInterval({ hits: 4, tries: 20 }, 0.9)
  // The last digit printed is one too many: the true end is 0.4010281.
  expect(Math.abs(low - 0.071354)).toBeLessThan(1e-6)
  expect(Math.abs(high - 0.401029)).toBeLessThan(1e-6)
  const wilson = wilsonInterval({ hits: 4, tries: 20 }, within90)
  expect(wilson.low).toBeCloseTo(0.093118, 6)
  expect(wilson.high).toBeCloseTo(0.3783767, 6)
})

it('nothing tried may be anything', () => {
  expect(wilsonInterval({ hits: 0, tries: 0 })).toEqual({ low: 0, high: 1 })
  expect(clopperPearsonInterval({ hits: 0, tries: 0 })).toEqual({ low: 0, high: 1 })
})

it('the ends of Wilson are where the score test is just as far off as it may be', () => {
  for (const [hits, tries] of [
    [3, 17],
    [200, 1000],
    [1, 2000],
  ] as const)
    for (const end of Object.values(wilsonInterval({ hits, tries })))
      expect(Math.abs(hits / tries - end) / Math.sqrt((end * (1 - end)) / tries)).toBeCloseTo(within95, 9)
})

describe('at most so many hits', () => {
  it('are the ways to have them, counted out', () => {
    const [tries, chance] = [9, 0.3]
    const byCount = Array.from({ length: tries + 1 }, () => 0)
    for (let way = 0; way < 2 ** tries; way++) {
      const hits = way.toString(2).replaceAll('0', '').length
      byCount[hits] = (byCount[hits] ?? 0) + chance ** hits * (1 - chance) ** (tries - hits)
    }
    let sum = 0
    byCount.forEach((own, hits) => {
      sum += own
      expect(binomialAtMost(hits, { tries, chance })).toBeCloseTo(sum, 12)
    })
  })

  it('are counted where the chance of none is too small for a number', () => {
    // Half of the ways of an odd number of tries have fewer than half hits.
    expect(binomialAtMost(1000, { tries: 2001, chance: 0.5 })).toBeCloseTo(0.5, 9)
  })

  it('are certain or impossible at the ends', () => {
    expect(binomialAtMost(-1, { tries: 5, chance: 0.5 })).toBe(0)
    expect(binomialAtMost(5, { tries: 5, chance: 0.5 })).toBe(1)
    expect(binomialAtMost(4, { tries: 5, chance: 1 })).toBe(0)
    expect(binomialAtMost(0, { tries: 5, chance: 0 })).toBe(1)
  })
})
