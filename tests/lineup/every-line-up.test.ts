import { describe, expect, it } from 'vitest'
import { findLineUpClash } from '#lineup/find-line-up-clash'
import { type LineUpValues, lineUpGoals } from '#lineup/line-up'
import { lineUpOf } from '#lineup/line-up-of-plan'
import { lineUpValues } from '#lineup/line-up-values'
import { quickLineUp } from '#lineup/quick-line-up'
import { bestOfEvery, tinyLineUp } from '../support/tiny-line-up'

// Outside check: every line-up of a tiny squad is tried.
describe('against every line-up there is', () => {
  const problems = Array.from({ length: 24 }, (_, index) => tinyLineUp(index + 1))
  const best = problems.map(bestOfEvery)
  const found = problems.map((problem) => quickLineUp(problem, { seed: 1 }))

  it('some can be and some cannot', () => {
    const possible = best.filter((values) => values !== null).length
    expect(possible).toBeGreaterThan(10)
    expect(possible).toBeLessThan(22)
  })

  it('the one at once is the best, goal by goal, and none is found where none can be', () => {
    for (const [index, problem] of problems.entries()) {
      const plan = found[index]
      const values = plan && lineUpValues(problem, plan)
      const rounded = (of: LineUpValues | null | undefined) =>
        of && lineUpGoals.map((goal) => Math.round(of[goal] * 1e4))
      expect(rounded(values), `problem ${index + 1}`).toEqual(rounded(best[index]))
    }
  })

  it('a bound is never above the best, and what is proven is the best', () => {
    for (const [index, problem] of problems.entries()) {
      const plan = found[index]
      if (!plan) continue
      const { proofs } = lineUpOf(problem, plan)
      for (const goal of lineUpGoals) {
        const least = best[index]?.[goal] ?? Number.NaN
        expect(proofs[goal].bound).toBeLessThanOrEqual(proofs[goal].value)
        expect(proofs[goal].bound).toBeLessThanOrEqual(least + 1e-6)
        if (proofs[goal].proven) expect(proofs[goal].value).toBeCloseTo(least, 3)
      }
    }
  })

  it('a reason against all is given only where none can be', () => {
    let given = 0
    for (const [index, problem] of problems.entries()) {
      const against = findLineUpClash(problem).filter(({ kind }) => !kind.startsWith('leastAbove'))
      if (against.length === 0) continue
      given += 1
      expect(best[index], `problem ${index + 1}: ${against[0]?.kind}`).toBeNull()
    }
    expect(given).toBeGreaterThan(3)
  })
})
