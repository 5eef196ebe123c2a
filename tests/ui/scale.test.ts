import { describe, expect, it } from 'vitest'
import { roundMarks, roundStep } from '#ui/charts/scale'

describe('marks of an axis', () => {
  it.each([
    [0.3, 0.5],
    [1, 1],
    [1.1, 2],
    [3, 5],
    [7, 10],
    [61, 100],
    [0, 1],
  ])('the round step for %d is %d', (size, step) => {
    expect(roundStep(size)).toBe(step)
  })

  it('begin at nought, reach the top and do not go a step beyond it', () => {
    expect(roundMarks(73)).toEqual([0, 20, 40, 60, 80])
    expect(roundMarks(80)).toEqual([0, 20, 40, 60, 80])
    expect(roundMarks(1)).toEqual([0, 0.5, 1])
  })
})
