import { describe, expect, it } from 'vitest'
import { checkLineUp } from '#lineup/check-line-up'
import { lineUpGoals } from '#lineup/line-up'
import { solveLineUp } from '#solver/solve-line-up'
import { laterTiny } from '../support/later-tiny'
import { bestOfEvery, tinyLineUp } from '../support/tiny-line-up'

const settings = { seed: 1, timeLimitMs: 20_000, workLimit: null }

// Outside: every plan that there is, counted out.
describe('a solved line-up of a tiny squad', { timeout: 60_000 }, () => {
  const problems = Array.from({ length: 16 }, (_, index) =>
    index % 3 === 2 ? laterTiny(tinyLineUp(index + 1)) : tinyLineUp(index + 1),
  )

  it('is the best of all plans in every goal, and impossible exactly where there is none', async () => {
    let possible = 0
    for (const problem of problems) {
      const best = bestOfEvery(problem)
      const answer = await solveLineUp(problem, { ...settings, began: performance.now() })
      expect(answer.kind).toBe(best ? 'solved' : 'impossible')
      if (answer.kind !== 'solved' || !best) continue
      possible += 1
      expect(checkLineUp(problem, answer.lineUp.plan)).toEqual([])
      for (const goal of lineUpGoals) {
        const { value, bound } = answer.lineUp.proofs[goal]
        expect(value).toBeCloseTo(best[goal], 3)
        expect(bound).toBeLessThanOrEqual(best[goal] + 1e-3)
      }
      for (const goal of ['promise', 'minutes', 'goal', 'starts'] as const)
        expect(answer.lineUp.proofs[goal].proven).toBe(true)
    }
    expect(possible).toBeGreaterThan(6)
    expect(possible).toBeLessThan(problems.length)
  })
})
