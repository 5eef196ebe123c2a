import { describe, expect, it } from 'vitest'
import { adjustedByBenjaminiHochberg } from '#common/statistics/benjamini-hochberg'

const found = (pValues: readonly number[], q: number) =>
  adjustedByBenjaminiHochberg(pValues).filter((adjusted) => adjusted <= q).length

const expectClose = (got: readonly number[], wanted: readonly number[]) => {
  expect(got).toHaveLength(wanted.length)
  got.forEach((value, at) => {
    expect(value).toBeCloseTo(wanted[at] ?? Number.NaN, 5)
  })
}

describe('p-values adjusted by Benjamini and Hochberg', () => {
  // The 15 p-values of their paper (JRSS-B 57, 1995): at q = .05 four are rejected; Bonferroni rejects three.
  const paper = [
    0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528,
    0.759, 1,
  ]
  it('finds the four of the paper', () => {
    expect(found(paper, 0.05)).toBe(4)
    expect(paper.filter((p) => p <= 0.05 / 15)).toHaveLength(3)
    // First four as printed in the tests of the Python package statsmodels (checked against R's multtest); the others by p · m / i.
    expectClose(
      adjustedByBenjaminiHochberg(paper),
      [
        0.0015, 0.003, 0.0095, 0.035625, 0.0603, 0.063857, 0.063857, 0.0645, 0.0765, 0.486, 0.581182,
        0.714875, 0.753231, 0.813214, 1,
      ],
    )
  })

  // R's p.adjust(…, "BH").
  it('is what R gives, whatever the order', () => {
    expectClose(adjustedByBenjaminiHochberg([0.01, 0.04, 0.03, 0.005]), [0.02, 0.04, 0.04, 0.02])
    expectClose(adjustedByBenjaminiHochberg([0.008, 0.03, 0.123, 0.6, 0.2]), [0.04, 0.075, 0.205, 0.6, 0.25])
  })

  // A set of 15 from a handbook of biological statistics ("dear enemy"): one at .05, seven at .25.
  it('finds one at .05 and seven at .25', () => {
    const set = [
      0.001, 0.008, 0.039, 0.041, 0.042, 0.06, 0.074, 0.205, 0.212, 0.216, 0.222, 0.251, 0.269, 0.275, 0.34,
    ]
    expect([found(set, 0.05), found(set, 0.25)]).toEqual([1, 7])
  })

  it('steps up: the smaller is found with the larger, though alone it would not be', () => {
    expect(found([0.04, 0.03], 0.05)).toBe(2)
    expect(adjustedByBenjaminiHochberg([])).toEqual([])
  })
})
