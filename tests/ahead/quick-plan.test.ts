import { describe, expect, it } from 'vitest'
import { checkAhead } from '#ahead/check-ahead'
import { checkLeans } from '#ahead/check-leans'
import { greedyAhead } from '#ahead/greedy-plan'
import { leansFor } from '#ahead/lean-to'
import { planValue } from '#ahead/plan-value'
import { quickAhead } from '#ahead/quick-plan'
import { allChoices } from '../support/all-choices'
import { randomAhead } from '../support/random-ahead'

describe('a plan at once', () => {
  it('keeps every rule and is no worse than the greedy one', () => {
    for (let seed = 1; seed <= 4; seed++) {
      const problem = randomAhead(seed, { practices: 8, themes: 6, designs: 6, players: 8 })
      const [quick, greedy] = [quickAhead(problem, { seed, steps: 1000 }), greedyAhead(problem)]
      expect(quick && checkAhead(problem, quick.choices)).toEqual([])
      expect(quick && checkLeans(problem, quick)).toEqual([])
      if (quick && greedy)
        expect(planValue(problem, quick).all).toBeLessThanOrEqual(planValue(problem, greedy).all)
    }
  })

  it('is the same for the same seed', () => {
    const problem = randomAhead(3, { practices: 8, themes: 6, designs: 6, players: 8 })
    expect(quickAhead(problem, { seed: 5 })).toEqual(quickAhead(problem, { seed: 5 }))
  })
})

describe('a plan at once, held against every choice of small cases', () => {
  it('is the best there is, or next to it', () => {
    let best = 0
    for (let seed = 1; seed <= 5; seed++) {
      const problem = randomAhead(seed, { practices: 3, themes: 4, designs: 2, players: 4 })
      let least = Number.POSITIVE_INFINITY
      for (const choices of allChoices(problem))
        if (checkAhead(problem, choices).length === 0)
          least = Math.min(least, planValue(problem, { choices, leans: leansFor(problem, choices) }).all)
      const quick = quickAhead(problem, { seed, steps: 2000 })
      const value = quick ? planValue(problem, quick).all : 0
      if (value <= least * 1.01) best++
    }
    expect(best).toBeGreaterThanOrEqual(5)
  })
})
