import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { practicesDue } from '#themes/practices-due'

const programme = (...shares: readonly number[]) =>
  shares.map((wishedShare, index) => ({ themeId: `t${index}`, wishedShare }))
const due = (shares: readonly number[], soFar: number) => [
  ...practicesDue(programme(...shares), soFar).values(),
]

describe('practices due of each theme', () => {
  it('follows Sainte-Laguë', () => {
    // "Should return 3, 2, 2": R's nzelect package, allocate_seats, with weights 53000, 24000, 23000 and 7 seats.
    expect(due([0.53, 0.24, 0.23], 7)).toEqual([3, 2, 2])
  })

  it('keeps free what the wishes leave free', () => {
    expect(due([0.25, 0.25], 8)).toEqual([2, 2])
  })

  it('takes wishes of more than a whole as several themes a practice', () => {
    expect(due([1, 0.5], 8)).toEqual([8, 4])
  })

  it('is nothing without a programme or practices', () => {
    expect(due([], 5)).toEqual([])
    expect(due([0, 0], 5)).toEqual([0, 0])
    expect(due([0.5, 0.5], 0)).toEqual([0, 0])
  })

  it('never takes a practice away from a theme when there is one more', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 40 }), { maxLength: 8 }),
        fc.nat(40),
        (percents, soFar) => {
          const shares = percents.map((percent) => percent / 100)
          const before = due(shares, soFar)
          due(shares, soFar + 1).forEach((count, index) => {
            expect(count).toBeGreaterThanOrEqual(before[index] as number)
          })
        },
      ),
    )
  })
})
