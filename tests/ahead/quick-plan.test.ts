import { describe, expect, it } from 'vitest'
import { checkAhead } from '#ahead/check-ahead'
import { checkLeans } from '#ahead/check-leans'
import { greedyAhead } from '#ahead/greedy-plan'
import { planValue } from '#ahead/plan-value'
import { quickAhead } from '#ahead/quick-plan'
import { randomAhead } from '../support/random-ahead'

describe('a plan at once', () => {
  it('keeps every rule and is no worse than the greedy one', () => {
    for (let seed = 1; seed <= 5; seed++) {
      const problem = randomAhead(seed, { practices: 10, themes: 8, designs: 8, players: 10 })
      const [quick, greedy] = [quickAhead(problem, { seed, steps: 2000 }), greedyAhead(problem)]
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
