import { describe, expect, it } from 'vitest'
import { checkLeans } from '#ahead/check-leans'
import { leansFor } from '#ahead/lean-to'
import { planValue } from '#ahead/plan-value'
import { bestLeans } from '#solver/best-leans'
import { loadSolver } from '#solver/highs'
import { randomAhead } from '../support/random-ahead'
import { seededRandom } from '../support/seeded-random'

describe('leans', () => {
  it('can be played and never make a plan worse', () => {
    for (let seed = 1; seed <= 6; seed++) {
      const problem = randomAhead(seed, { practices: 10, themes: 8, designs: 8, players: 10 })
      const random = seededRandom(seed)
      const choices = problem.practices.map(({ offers }) => random.whole(0, offers.length - 1))
      const even = planValue(problem, {
        choices,
        leans: leansFor(problem, choices, { sweeps: 0 }),
      })
      const plan = { choices, leans: leansFor(problem, choices) }
      expect(checkLeans(problem, plan)).toEqual([])
      expect(planValue(problem, plan).balance).toBeLessThan(even.balance)
      expect(planValue(problem, plan).all).toBeLessThan(even.all)
    }
  })

  it('come within a fiftieth of the best there are, as a linear program finds them', async () => {
    const solver = await loadSolver()
    for (let seed = 1; seed <= 3; seed++) {
      const problem = randomAhead(seed, { practices: 6, themes: 5, designs: 5, players: 7 })
      const choices = problem.practices.map(() => 0)
      const best = bestLeans(problem, choices, { solver, timeMs: 5000 })
      const value = planValue(problem, { choices, leans: leansFor(problem, choices) }).all
      expect(best.isBest).toBe(true)
      expect(value).toBeLessThanOrEqual(1.02 * planValue(problem, best.plan).all + 0.5)
    }
  })
})
