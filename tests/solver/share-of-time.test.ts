import { expect, test } from 'vitest'
import { isUp, shareOfTime } from '#solver/deadline'

const began = performance.now() - 1000

test('of several searches each may take its part of what is left', () => {
  const settings = { began, timeLimitMs: 5000, workLimit: null }
  const first = shareOfTime(settings, { searches: 4, index: 0 })
  expect(first).toBeGreaterThan(900)
  expect(first).toBeLessThanOrEqual(1000)
  expect(shareOfTime(settings, { searches: 4, index: 3 })).toBeGreaterThan(3600)
})

test('where work is counted the clock does not say how much each may do', () => {
  const settings = { began, timeLimitMs: 5000, workLimit: 100 }
  for (const index of [0, 3]) expect(shareOfTime(settings, { searches: 4, index })).toBe(1250)
})

test('time is up by the clock, or by the work alone where that is counted', () => {
  const left = (ms: number, work: number | null) => ({ leftMs: () => ms, leftWork: () => work })
  expect([left(1, null), left(0, null), left(-1, 3), left(500, 0)].map(isUp)).toEqual([
    false,
    true,
    false,
    true,
  ])
})
