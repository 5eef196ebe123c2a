import { describe, expect, it } from 'vitest'
import { checkLineUp } from '#lineup/check-line-up'
import { findLineUpClash } from '#lineup/find-line-up-clash'
import { type LineUpValues, lineUpGoals } from '#lineup/line-up'
import { lineUpOf } from '#lineup/line-up-of-plan'
import { lineUpValues } from '#lineup/line-up-values'
import { quickLineUp } from '#lineup/quick-line-up'
import { everyTinyPlan, tinyLineUp } from '../support/tiny-line-up'

function isBetter(one: LineUpValues, other: LineUpValues): boolean {
  for (const goal of lineUpGoals) {
    if (one[goal] < other[goal] - 1e-6) return true
    if (one[goal] > other[goal] + 1e-6) return false
  }
  return false
}

// Outside check: every line-up of a tiny squad is tried.
describe('against every line-up there is', () => {
  const plans = everyTinyPlan()
  const problems = Array.from({ length: 24 }, (_, index) => tinyLineUp(index + 1))
  const best = problems.map((problem) => {
    let least: LineUpValues | null = null
    for (const plan of plans) {
      if (checkLineUp(problem, plan).length > 0) continue
      const values = lineUpValues(problem, plan)
      if (!least || isBetter(values, least)) least = values
    }
    return least
  })

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
      for (const goal of lineUpGoals) expect(proofs[goal].bound).toBeLessThanOrEqual(proofs[goal].value)
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
