import { describe, expect, it } from 'vitest'
import { checkLineUp } from '#lineup/check-line-up'
import type { LineUpProblem } from '#lineup/problem'
import { lineUpTradeOffs } from '#solver/line-up-trade-offs'
import { lineUpWaysOut, without } from '#solver/line-up-ways-out'
import { solveLineUp } from '#solver/solve-line-up'
import { solveLineUpPlainly } from '../bench/plain-line-up'
import { smallLineUp } from '../support/line-up-builder'
import { openLines } from '../support/open-lines'

const settings = () => ({ seed: 1, timeLimitMs: 20_000, workLimit: null, began: performance.now() })
const close = (one: number, other: number) =>
  expect(Math.abs(one - other)).toBeLessThan(1e-3 * Math.max(1, other))

// Outside: plain models of the same problems, player by window.
describe('what is offered beside a line-up', { timeout: 60_000 }, () => {
  it('lets go of just those rules without which there is one', async () => {
    const problem = openLines(
      smallLineUp({
        periods: 1,
        windows: 4,
        rules: { leastSpellSeconds: 900, longestOffSeconds: 300, keeperForPeriod: true },
      }),
    )
    const ways = await lineUpWaysOut(problem, { ...settings(), missed: null })
    for (const what of ['leastSpellSeconds', 'longestOffSeconds', 'keeperForPeriod'] as const) {
      const plain = await solveLineUpPlainly(without(problem, { what }), 5000)
      const way = ways.find(({ letGo }) => letGo.what === what)
      expect(way !== undefined).toBe(plain.kind === 'solved')
      if (!way) continue
      close(way.short.value, plain.values.promise)
      expect(way.short.proven).toBe(true)
      expect(checkLineUp(without(problem, way.letGo), way.plan)).toEqual([])
    }
    expect(ways.length).toBeGreaterThan(0)
  })

  it('gives fewer changes at the price that they have', async () => {
    const problem: LineUpProblem = openLines(smallLineUp({ count: 5 }))
    const answer = await solveLineUp(problem, settings())
    if (answer.kind !== 'solved') throw new Error(answer.kind)
    const offers = await lineUpTradeOffs(problem, answer.lineUp, settings())
    expect(offers.length).toBeGreaterThan(0)
    for (const { changes, fewer, isProven, lineUp } of offers) {
      expect(changes).toBe(answer.lineUp.proofs.changes.value - fewer)
      const bound = { ...problem, rules: { ...problem.rules, mostChanges: changes } }
      expect(checkLineUp(bound, lineUp.plan)).toEqual([])
      const plain = await solveLineUpPlainly(bound, 5000)
      close(lineUp.proofs.minutes.value, plain.values.minutes)
      expect(isProven).toBe(true)
    }
  })
})
