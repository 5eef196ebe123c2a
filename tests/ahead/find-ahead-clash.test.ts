import { describe, expect, it } from 'vitest'
import { checkAhead } from '#ahead/check-ahead'
import { chooseInOrder } from '#ahead/choose-in-order'
import { findAheadClash } from '#ahead/find-ahead-clash'
import { limitsBoard } from '#ahead/limits-board'
import type { AheadProblem } from '#ahead/problem'
import { quickAhead } from '#ahead/quick-plan'
import { sayAheadClash } from '#ahead/say-ahead-clash'
import { allChoices } from '../support/all-choices'
import { randomAhead } from '../support/random-ahead'

const tiny = (seed: number) =>
  randomAhead(seed, {
    practices: 3,
    themes: 4,
    designs: 3,
    players: 3,
    rules: 7,
    mayClash: true,
  })

function isPossible(problem: AheadProblem): boolean {
  for (const choices of allChoices(problem)) if (checkAhead(problem, choices).length === 0) return true
  return false
}

describe('whether there is a plan at all', () => {
  it('is told as trying every choice tells it', () => {
    let [possible, impossible, told] = [0, 0, 0]
    for (let seed = 1; seed <= 60; seed++) {
      const problem = tiny(seed)
      const way = chooseInOrder(limitsBoard(problem), { mostTried: 20_000, rank: (_, left) => left })
      const clash = findAheadClash(problem)
      if (isPossible(problem)) {
        possible++
        expect(clash).toEqual([])
        expect(way.kind === 'found' && checkAhead(problem, way.choices)).toEqual([])
      } else {
        impossible++
        expect(way.kind).toBe('none')
        if (clash.length > 0) told++
      }
    }
    expect(possible).toBeGreaterThan(10)
    expect(impossible).toBeGreaterThan(10)
    expect(told / impossible).toBeGreaterThan(0.8)
  })

  it('is a plan at once wherever there is one', () => {
    for (let seed = 1; seed <= 15; seed++) {
      const problem = tiny(seed)
      const plan = quickAhead(problem, { seed, steps: 50 })
      expect(plan === null || checkAhead(problem, plan.choices).length === 0).toBe(true)
      expect(plan !== null).toBe(isPossible(problem))
    }
  })

  it('is said in two sentences that name what stands against what', () => {
    let said = 0
    for (let seed = 1; seed <= 60; seed++) {
      const problem = tiny(seed)
      for (const clash of findAheadClash(problem)) {
        expect(clash.rules.length).toBeGreaterThan(0)
        const sentence = sayAheadClash(problem, clash)
        expect(sentence).not.toMatch(/undefined|null|NaN/)
        expect(sentence).toMatch(/^[A-Z].*\. [A-Z].*\.$/)
        said++
      }
    }
    expect(said).toBeGreaterThan(10)
  })
})
