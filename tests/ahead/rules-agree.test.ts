import { describe, expect, it } from 'vitest'
import { aheadRules } from '#ahead/ahead-rules'
import type { AheadChoices } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import type { Pick, RuleLimits } from '#ahead/rule'
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

function* allChoices({ practices }: AheadProblem): Generator<AheadChoices> {
  const choices = practices.map(() => 0)
  while (true) {
    yield [...choices]
    let at = choices.length - 1
    while (at >= 0 && (choices[at] ?? 0) + 1 >= (practices[at]?.offers.length ?? 0)) choices[at--] = 0
    if (at < 0) return
    choices[at] = (choices[at] ?? 0) + 1
  }
}

describe('each rule of the weeks ahead, as a check and as conditions', () => {
  for (const rule of aheadRules)
    it(`says the same of every choice: ${rule.name}`, () => {
      let [kept, broken] = [0, 0]
      for (let seed = 1; seed <= 60; seed++) {
        const problem = randomAhead(seed, {
          practices: 4 + (seed % 2),
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
          if (kept + broken > 40_000) break
        }
      }
      expect(kept).toBeGreaterThan(100)
      if (rule.name !== 'offered') expect(broken).toBeGreaterThan(100)
    })
})
