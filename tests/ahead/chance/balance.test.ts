import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { balance } from '#ahead/chance/balance'

type Limited = { readonly wish: number; readonly low: number; readonly high: number }

function balanced(players: readonly Limited[]): readonly number[] {
  const wish = Float64Array.from(players, (own) => own.wish)
  balance({
    count: players.length,
    wish,
    low: Float64Array.from(players, (own) => own.low),
    high: Float64Array.from(players, (own) => own.high),
  })
  return [...wish]
}

const limited = fc.record({
  wish: fc.double({ min: -900, max: 900, noNaN: true }),
  low: fc.double({ min: -300, max: 0, noNaN: true }),
  high: fc.double({ min: 0, max: 300, noNaN: true }),
})

describe('wishes made to add up to nothing', () => {
  it('take the same from everyone', () => {
    const free = { low: -1000, high: 1000 }
    expect(
      balanced([
        { wish: 90, ...free },
        { wish: 30, ...free },
        { wish: 0, ...free },
      ]),
    ).toEqual([50, -10, -40])
  })

  it('take nobody past its limit', () => {
    const [least, ...others] = balanced([
      { wish: 90, low: -5, high: 100 },
      { wish: 30, low: -5, high: 100 },
      { wish: 0, low: -5, high: 100 },
    ])
    expect(least).toBeCloseTo(10 + 0, 9)
    expect(others.map((own) => Math.round(own * 1e6) / 1e6)).toEqual([-5, -5])
  })

  it('leave what adds up and is within its limits as it is', () => {
    expect(
      balanced([
        { wish: 12, low: -20, high: 20 },
        { wish: -12, low: -20, high: 20 },
      ]),
    ).toEqual([12, -12])
  })

  it('add up, keep all limits, and no second moved from one to another comes nearer to the wishes', () => {
    fc.assert(
      fc.property(fc.array(limited, { minLength: 1, maxLength: 18 }), (players) => {
        const dealt = balanced(players)
        expect(Math.abs(dealt.reduce((sum, own) => sum + own, 0))).toBeLessThan(1e-6)
        dealt.forEach((own, at) => {
          expect(own).toBeGreaterThanOrEqual(players[at]?.low ?? 0)
          expect(own).toBeLessThanOrEqual(players[at]?.high ?? 0)
        })
        // The sum of squares is convex, so that no better exchange of two means no better list.
        const off = dealt.map((own, at) => own - (players[at]?.wish ?? 0))
        dealt.forEach((giver, from) => {
          dealt.forEach((taker, to) => {
            const canGive = giver - (players[from]?.low ?? 0) > 1e-6
            const canTake = (players[to]?.high ?? 0) - taker > 1e-6
            if (canGive && canTake) expect(off[from] ?? 0).toBeLessThanOrEqual((off[to] ?? 0) + 1e-5)
          })
        })
      }),
      { seed: 7, numRuns: 200 },
    )
  })
})
