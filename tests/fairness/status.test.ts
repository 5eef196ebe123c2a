import { describe, expect, it } from 'vitest'
import { gapSeconds } from '#fairness/gap'
import { statusOf } from '#fairness/status'
import { toleranceSeconds } from '#fairness/tolerance'
import { defaultPolicy } from '#squad/policy'

describe('the tolerance', () => {
  it('is the larger of the seconds and the share of what is due', () => {
    expect(toleranceSeconds(defaultPolicy, 0)).toBe(600)
    // 15 % of 4000 s is 600 s: both are the same.
    expect(toleranceSeconds(defaultPolicy, 4000)).toBe(600)
    expect(toleranceSeconds(defaultPolicy, 8000)).toBe(1200)
  })
})

describe('the status', () => {
  const statusAt = (seconds: number, fairSeconds: number) => statusOf({ seconds, fairSeconds }, defaultPolicy)

  it.each([
    [400, 1000, 'within'],
    [399, 1000, 'short'],
    [1600, 1000, 'within'],
    [1601, 1000, 'over'],
    [0, 0, 'within'],
    [6800, 8000, 'within'],
    [6799, 8000, 'short'],
  ])('of %i s where %i s are due', (seconds, fairSeconds, status) => {
    expect(statusAt(seconds, fairSeconds)).toBe(status)
  })

  it('is decided before rounding', () => {
    expect(gapSeconds({ seconds: 399.9999, fairSeconds: 1000 }).toFixed(3)).toBe('-600.000')
    expect(statusAt(399.9999, 1000)).toBe('short')
    expect(statusAt(1600.0001, 1000)).toBe('over')
  })

  it('is within when three thirds come out a hair beside the whole', () => {
    const none = { toleranceSeconds: 0, toleranceShare: 0 }
    const thirds = 20 * (1 / 3) + 40 * (1 / 3) + 37 * (1 / 3) + 2 * (1 / 3)
    expect(thirds).not.toBe(33)
    expect(statusOf({ seconds: 33, fairSeconds: thirds }, none)).toBe('within')
  })
})
