import { describe, expect, it } from 'vitest'
import { checkLineUp } from '#lineup/check-line-up'
import { isBetterLineUp } from '#lineup/compare-line-ups'
import type { LineUp } from '#lineup/line-up'
import { lineUpWaysOutInWorker, solveLineUpInWorker } from '#solver/line-up-in-worker'
import { smallLineUp } from '../support/line-up-builder'
import { randomLineUp } from '../support/random-line-up'
import { threadLineUpWorker } from '../support/thread-worker'
import { valuesOf } from '../support/values-of'

const settings = { seed: 1, timeLimitMs: 20_000, workLimit: null }

describe('a line-up in a worker', { timeout: 60_000 }, () => {
  it('comes back solved, told of on the way, each better than the one before', async () => {
    const problem = randomLineUp(9, { players: 7, aSide: 5, periods: 2 })
    const told: LineUp[] = []
    const watch = { onBetter: (own: LineUp) => told.push(own) }
    const worked = await solveLineUpInWorker(problem, settings, watch, threadLineUpWorker)
    if (worked.kind !== 'solved') throw new Error(worked.kind)
    expect(checkLineUp(problem, worked.lineUp.plan)).toEqual([])
    expect(told.length).toBeGreaterThan(0)
    const values = [...told, worked.lineUp].map(valuesOf)
    for (const [index, own] of values.slice(1).entries())
      expect(isBetterLineUp(values[index] ?? own, own)).toBe(false)
  })

  it('stops at once when told to, with the best line-up so far', async () => {
    const problem = randomLineUp(11)
    const stop = new AbortController()
    let stoppedAt = 0
    const onBetter = () => {
      stoppedAt = performance.now()
      stop.abort()
    }
    const worked = await solveLineUpInWorker(
      problem,
      settings,
      { signal: stop.signal, onBetter },
      threadLineUpWorker,
    )
    expect(performance.now() - stoppedAt).toBeLessThan(1000)
    if (worked.kind !== 'stopped' || !worked.lineUp) throw new Error(worked.kind)
    expect(checkLineUp(problem, worked.lineUp.plan)).toEqual([])
  })

  it('says what to let go where nothing fits', async () => {
    const tight = smallLineUp({
      periods: 1,
      windows: 4,
      rules: { leastSpellSeconds: 900, longestOffSeconds: 300 },
    })
    const ways = await lineUpWaysOutInWorker(tight, { settings, missed: null }, threadLineUpWorker)
    expect(ways.map(({ letGo }) => letGo.what).sort()).toEqual(['leastSpellSeconds', 'longestOffSeconds'])
  })
})
