import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { layTurns } from '#pitch/lay-back'

const turns = fc.array(
  fc.record({ seconds: fc.integer({ min: 1, max: 600 }), gapSeconds: fc.integer({ min: 0, max: 120 }) }),
  { minLength: 1, maxLength: 30 },
)
const room = fc.record({
  from: fc.integer({ min: 0, max: 5000 }),
  length: fc.integer({ min: 0, max: 8000 }),
  at: fc.constantFrom('start' as const, 'end' as const),
})

describe('turns that nobody timed', () => {
  it('stay in order inside the time there was, in whole seconds', () => {
    fc.assert(
      fc.property(turns, room, (planned, { from, length, at }) => {
        const laid = layTurns(planned, { from, to: from + length, at })
        expect(laid).toHaveLength(planned.length)
        let last = from
        for (const { start, end } of laid) {
          expect(Number.isInteger(start) && Number.isInteger(end)).toBe(true)
          expect(start).toBeGreaterThanOrEqual(last)
          expect(end).toBeGreaterThanOrEqual(start)
          last = end
        }
        expect(last).toBeLessThanOrEqual(from + length)
      }),
    )
  })

  it('keep their lengths and gaps where there is time for them', () => {
    fc.assert(
      fc.property(turns, room, (planned, { from, length, at }) => {
        const whole = planned.reduce((sum, { seconds, gapSeconds }) => sum + seconds + gapSeconds, 0)
        const needed = whole - (planned.at(-1)?.gapSeconds ?? 0)
        const to = from + needed + length
        const laid = layTurns(planned, { from, to, at })
        expect(laid.map(({ start, end }) => end - start)).toEqual(planned.map(({ seconds }) => seconds))
        for (const [index, { start }] of laid.entries()) {
          const before = laid[index - 1]
          if (before) expect(start - before.end).toBe(planned[index - 1]?.gapSeconds)
        }
        if (at === 'end') expect(laid.at(-1)?.end).toBe(to)
        else expect(laid[0]?.start).toBe(from)
      }),
    )
  })

  it('have a second at least each, as long as there is one for each', () => {
    fc.assert(
      fc.property(turns, room, (planned, { from, length, at }) => {
        const laid = layTurns(planned, { from, to: from + length, at })
        const some = laid.filter(({ start, end }) => start < end).length
        expect(some).toBe(Math.min(planned.length, length))
      }),
    )
  })

  it('are shortened in proportion, to the second', () => {
    fc.assert(
      fc.property(turns, fc.integer({ min: 1, max: 99 }), (planned, percent) => {
        const whole = planned.reduce((sum, { seconds, gapSeconds }) => sum + seconds + gapSeconds, 0)
        const needed = whole - (planned.at(-1)?.gapSeconds ?? 0)
        const available = Math.floor((needed * percent) / 100)
        const shares = planned.map(({ seconds }) => (seconds * available) / needed)
        fc.pre(Math.min(...shares) >= 1)
        const laid = layTurns(planned, { from: 0, to: available, at: 'end' })
        for (const [index, { start, end }] of laid.entries()) {
          expect(Math.abs(end - start - (shares[index] ?? 0))).toBeLessThanOrEqual(1)
        }
      }),
    )
  })
})
