import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { balanceGeometry, balanceSpanSeconds } from '#ui/figures/balance-geometry'

const bar = { spanSeconds: 1200, width: 180, inset: 10 }

describe('the balance bar', () => {
  it('has the even share in the middle and a share that equals it on the middle', () => {
    const { centre, dot, beyond } = balanceGeometry(
      { seconds: 900, dueSeconds: 900, toleranceSeconds: 600 },
      bar,
    )
    expect([centre, dot, beyond]).toEqual([90, 90, null])
  })

  it('has half the half-bar for half the span: 600 s short of 1200 s is 40 of 80 to the left', () => {
    const { dot, bandFrom, bandTo } = balanceGeometry(
      { seconds: 300, dueSeconds: 900, toleranceSeconds: 600 },
      bar,
    )
    expect([dot, bandFrom, bandTo]).toEqual([50, 50, 130])
  })

  it('ends in an arrow where the share lies beyond the bar', () => {
    const short = balanceGeometry({ seconds: 0, dueSeconds: 5000, toleranceSeconds: 600 }, bar)
    const over = balanceGeometry({ seconds: 5000, dueSeconds: 0, toleranceSeconds: 600 }, bar)
    expect([short.dot, short.beyond]).toEqual([10, 'left'])
    expect([over.dot, over.beyond]).toEqual([170, 'right'])
  })

  it('never draws outside itself, puts short left and over right, and the dot in the band exactly when it is about even', () => {
    const seconds = fc.integer({ min: 0, max: 40_000 })
    const balance = fc.record({ seconds: seconds, dueSeconds: seconds, toleranceSeconds: seconds })
    fc.assert(
      fc.property(balance, fc.array(balance, { maxLength: 20 }), (one, others) => {
        const spanSeconds = balanceSpanSeconds([one, ...others])
        const { dot, centre, bandFrom, bandTo, beyond } = balanceGeometry(one, { ...bar, spanSeconds })
        const gap = one.seconds - one.dueSeconds
        expect(beyond).toBeNull()
        expect(dot).toBeGreaterThanOrEqual(bar.inset)
        expect(dot).toBeLessThanOrEqual(bar.width - bar.inset)
        expect(Math.sign(dot - centre)).toBe(Math.sign(gap))
        if (Math.abs(gap) < one.toleranceSeconds) expect(dot > bandFrom && dot < bandTo).toBe(true)
        if (Math.abs(gap) > one.toleranceSeconds) expect(dot < bandFrom || dot > bandTo).toBe(true)
      }),
    )
  })

  it('leaves bar beside the band even when nobody is outside it', () => {
    expect(balanceSpanSeconds([{ seconds: 900, dueSeconds: 900, toleranceSeconds: 600 }])).toBe(960)
    expect(balanceSpanSeconds([])).toBe(60)
  })
})
