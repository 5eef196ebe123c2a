import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { wholeMinutes } from '#ui/figures/minutes'
import { showFigures } from '#ui/figures/shown-figure'

const figure = (seconds: number, dueSeconds: number) => ({
  seconds,
  dueSeconds,
  toleranceSeconds: 600,
  status: 'within' as const,
  isConcern: false,
})

describe('figures in whole minutes', () => {
  it('add up to the whole time, where rounding each alone would not', () => {
    // 3 × 10 min 30 s are 31 min 30 s; rounded alone they would be 33.
    const shown = showFigures([figure(630, 630), figure(630, 630), figure(630, 630)])
    expect(shown.map(({ minutes }) => minutes)).toEqual([11, 11, 10])
  })

  it('always add up, and had less due is the difference shown', () => {
    const seconds = fc.double({ min: 0, max: 40_000, noNaN: true })
    const rows = fc.array(fc.tuple(seconds, seconds), { minLength: 1, maxLength: 4 })
    fc.assert(
      fc.property(rows, (pairs) => {
        const shown = showFigures(pairs.map(([had, due]) => figure(had, due)))
        const total = pairs.reduce((sum, [had]) => sum + had, 0)
        expect(shown.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(Math.round(total / 60))
        for (const { figure: of, minutes, dueMinutes, differenceMinutes } of shown) {
          expect(minutes - dueMinutes).toBe(differenceMinutes)
          expect(dueMinutes).toBeGreaterThanOrEqual(0)
          expect(Math.abs(dueMinutes - of.dueSeconds / 60)).toBeLessThan(1.5 + 1e-6)
        }
      }),
    )
  })

  it('name the difference that the flags name', () => {
    const [attack] = showFigures([figure(12_460, 17_210), figure(4_000, 3_999)])
    expect(attack?.differenceMinutes).toBe(wholeMinutes(12_460 - 17_210))
  })
})
