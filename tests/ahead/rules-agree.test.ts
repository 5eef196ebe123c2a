import { describe, expect, it } from 'vitest'
import { aheadRules } from '#ahead/ahead-rules'
import type { AheadChoices } from '#ahead/plan'
import type { Pick, RuleLimits } from '#ahead/rule'
import { allChoices } from '../support/all-choices'
import { randomAhead } from '../support/random-ahead'

function isWithin(limits: RuleLimits, choices: AheadChoices): boolean {
  const isChosen = ({ practice, offer }: Pick) => choices[practice] === offer
  return (
    !limits.never.some(isChosen) &&
    limits.atMostOne.every((list) => list.filter(isChosen).length <= 1) &&
    limits.needs.every(({ pick, oneOf }) => !isChosen(pick) || oneOf.some(isChosen)) &&
    limits.atLeastOne.every((list) => list.some(isChosen))
  )
}

describe('each rule of the weeks ahead, as a check and as conditions', () => {
  for (const rule of aheadRules)
    it(`says the same of every choice: ${rule.name}`, () => {
      let [kept, broken] = [0, 0]
      for (let seed = 1; seed <= 25; seed++) {
        const problem = randomAhead(seed, {
          practices: seed % 5 === 0 ? 4 : 3,
          themes: 4,
          designs: 3,
          players: 3,
          rules: 9,
          mayClash: true,
        })
        const limits = rule.limits(problem)
        for (const choices of allChoices(problem)) {
          const isKept = rule.faults(problem, choices).length === 0
          if (isKept !== isWithin(limits, choices)) expect({ seed, choices, isKept }).toBe('agreed')
          if (isKept) kept++
          else broken++
        }
      }
      expect(kept).toBeGreaterThan(100)
      if (rule.name !== 'offered') expect(broken).toBeGreaterThan(100)
    })
})
