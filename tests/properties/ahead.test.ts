import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkAhead } from '#ahead/check-ahead'
import { checkLeans } from '#ahead/check-leans'
import { expectedEnd } from '#ahead/expected-end'
import { hopeBoard } from '#ahead/hope-board'
import { leansFor } from '#ahead/lean-to'
import { planValue } from '#ahead/plan-value'
import type { AheadProblem } from '#ahead/problem'
import { quickAhead } from '#ahead/quick-plan'
import { rotationColumns } from '#rotation/problem'
import { randomAhead } from '../support/random-ahead'

const small = { practices: 5, themes: 5, designs: 3, players: 5 }
const seeds = fc.integer({ min: 1, max: 1_000_000 })
const steps = 100

describe('the weeks ahead', () => {
  it('keep every rule, and what they lean on can be played', () => {
    fc.assert(
      fc.property(seeds, fc.boolean(), (seed, mayClash) => {
        const problem = randomAhead(seed, { ...small, mayClash })
        const plan = quickAhead(problem, { seed, steps })
        if (!mayClash) expect(plan).not.toBeNull()
        if (plan) expect([...checkAhead(problem, plan.choices), ...checkLeans(problem, plan)]).toEqual([])
      }),
      { numRuns: 12 },
    )
  })

  it('leave what is held as it is', () => {
    fc.assert(
      fc.property(seeds, fc.nat({ max: 4 }), (seed, at) => {
        const problem = randomAhead(seed, small)
        const plan = quickAhead(problem, { seed, steps })
        const choice = plan?.choices[at] ?? -1
        const offer = problem.practices[at]?.offers[choice]
        if (!offer) return expect(plan).toBeNull()
        const held: AheadProblem = {
          ...problem,
          practices: problem.practices.map((own, place) =>
            place === at ? { ...own, held: { theme: offer.theme, design: offer.design } } : own,
          ),
        }
        expect(quickAhead(held, { seed: seed + 1, steps })?.choices[at]).toBe(choice)
      }),
      { numRuns: 8 },
    )
  })

  it('are worth no less than is hoped for of their choices, where no theme is wished for', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const random = randomAhead(seed, small)
        const problem = { ...random, themes: random.themes.map((own) => ({ ...own, wishedShare: 0 })) }
        const choices = problem.practices.map(() => 0)
        const value = planValue(problem, { choices, leans: leansFor(problem, choices) })
        const hope = hopeBoard(problem)
        hope.addAll(choices, 1)
        expect(hope.value()).toBeLessThanOrEqual(value.all + 1e-6)
      }),
      { numRuns: 12 },
    )
  })

  it('change nothing over all players together but what playing and waiting are', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const problem = randomAhead(seed, small)
        const choices = problem.practices.map(() => 0)
        const ends = expectedEnd(problem, { choices, leans: leansFor(problem, choices) })
        for (const column of rotationColumns) {
          const sum = (list: readonly { readonly gap: Readonly<Record<string, number>> }[]) =>
            list.reduce((all, { gap }) => all + (gap[column] ?? 0), 0)
          expect(sum(ends)).toBeCloseTo(sum(problem.players), 3)
        }
      }),
      { numRuns: 8 },
    )
  })

  it('are worth twice as many minutes where everything lasts twice as long', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const problem = randomAhead(seed, small)
        const double = twiceAsLong(problem)
        const choices = problem.practices.map(() => 0)
        const even = (of: AheadProblem) =>
          planValue(of, { choices, leans: leansFor(of, choices, { sweeps: 0 }) }).all
        expect(even(double)).toBeCloseTo(2 * even(problem), 6)
      }),
      { numRuns: 8 },
    )
  })
})

function twiceAsLong(problem: AheadProblem): AheadProblem {
  const all = <Figures extends object>(figures: Figures): Figures =>
    Object.fromEntries(Object.entries(figures).map(([key, value]) => [key, 2 * value])) as Figures
  return {
    ...problem,
    practices: problem.practices.map((own) => ({
      ...own,
      offers: own.offers.map((offer) => ({
        ...offer,
        seats: all(offer.seats),
        liveSeconds: 2 * offer.liveSeconds,
      })),
    })),
    players: problem.players.map((own) => ({
      ...own,
      gap: all(own.gap),
      tolerance: all(own.tolerance),
      playedSeconds: 2 * own.playedSeconds,
      themeSeconds: own.themeSeconds.map((seconds) => 2 * seconds),
      themeTolerance: 2 * own.themeTolerance,
    })),
  }
}
