import { describe, expect, it } from 'vitest'
import { checkAhead } from '#ahead/check-ahead'
import { checkLeans } from '#ahead/check-leans'
import { greedyAhead } from '#ahead/greedy-plan'
import { type AheadChoices, chosenOffer, type SolvedAhead } from '#ahead/plan'
import { planValue } from '#ahead/plan-value'
import type { AheadProblem } from '#ahead/problem'
import { quickAhead } from '#ahead/quick-plan'
import { themeWithAbove } from '#ahead/theme-with-above'
import { aheadAlternatives } from '#solver/ahead-alternatives'
import { aheadModel, oneBin } from '#solver/ahead-model'
import { bestLeans } from '#solver/best-leans'
import { loadSolver } from '#solver/highs'
import { solveAhead } from '#solver/solve-ahead'
import { randomAhead } from '../support/random-ahead'

const solver = await loadSolver()
const limits = { timeMs: 20_000, work: null, seed: 1 }

function settings(timeLimitMs = 20_000) {
  return { seed: 1, timeLimitMs, workLimit: null, began: performance.now() }
}

/** Few enough to try every choice. */
function tiny(seed: number): AheadProblem {
  return randomAhead(seed, { practices: 3, themes: 2, designs: 2, players: 4 })
}

function everyChoice({ practices }: AheadProblem): readonly AheadChoices[] {
  return practices.reduce<readonly (readonly number[])[]>(
    (all, { offers }) => all.flatMap((own) => offers.map((_, offer) => [...own, offer])),
    [[]],
  )
}

async function solved(problem: AheadProblem, timeLimitMs?: number): Promise<SolvedAhead> {
  const answer = await solveAhead(problem, settings(timeLimitMs))
  if (answer.kind !== 'solved') throw new Error(answer.kind)
  return answer.solved
}

describe('the weeks ahead, solved', () => {
  it('are as good as the best of every choice that keeps the rules, and no bound is above it', async () => {
    for (const seed of [1, 2]) {
      const problem = tiny(seed)
      const possible = everyChoice(problem).filter((own) => checkAhead(problem, own).length === 0)
      const values = possible.map(
        (own) => planValue(problem, bestLeans(problem, own, { solver, timeMs: 20_000 }).plan).all,
      )
      const best = Math.min(...values)
      const { plan, proof } = await solved(problem)
      expect(checkAhead(problem, plan.choices)).toEqual([])
      expect(checkLeans(problem, plan)).toEqual([])
      expect(proof.value).toBeCloseTo(best, 4)
      expect(proof.bound).toBeLessThanOrEqual(best + 1e-5)
      expect(proof.proven).toBe(true)
      // The same model with all practices together says no more than is true.
      const bound = solver.solve(aheadModel(problem, oneBin(problem)).linear, limits)
      expect(bound.status).toBe('optimal')
      expect(bound.bound).toBeLessThanOrEqual(best + 1e-5)
    }
  })

  it('keep every rule, stay as held, and are never worse than practice by practice', async () => {
    for (const seed of [4, 5]) {
      const problem = randomAhead(seed, { practices: 6, themes: 8, designs: 6, players: 8 })
      const { plan, proof } = await solved(problem, 500)
      expect(checkAhead(problem, plan.choices)).toEqual([])
      expect(checkLeans(problem, plan)).toEqual([])
      expect(planValue(problem, plan).all).toBeCloseTo(proof.value, 6)
      expect(proof.bound).toBeLessThanOrEqual(proof.value)
      const greedy = greedyAhead(problem)
      if (greedy) expect(proof.value).toBeLessThanOrEqual(planValue(problem, greedy).all + 1e-6)
      const held = chosenOffer(problem, plan.choices, 1)
      if (!held) throw new Error('Nothing is chosen.')
      const kept = await solved(withHeld(problem, 1, { theme: held.theme, design: held.design }), 300)
      const after = chosenOffer(problem, kept.plan.choices, 1)
      expect(after?.design).toBe(held.design)
      expect(themeWithAbove(problem.themes, after?.theme ?? -1)).toContain(held.theme)
    }
  })

  it('come back no worse than the plan that is known', async () => {
    const problem = randomAhead(8, { practices: 8, themes: 8, designs: 6, players: 8 })
    const first = await solved(problem, 400)
    const again = await solveAhead(problem, { ...settings(1), start: first.plan })
    if (again.kind !== 'solved') throw new Error(again.kind)
    expect(again.solved.proof.value).toBeLessThanOrEqual(first.proof.value + 1e-6)
  })

  it('begin from the best of three plans at once', async () => {
    // The first of the three is the worst here by far.
    const problem = randomAhead(2003)
    const values = [1, 2, 3].flatMap((seed) => {
      const plan = quickAhead(problem, { seed })
      return plan ? [planValue(problem, plan).all] : []
    })
    const told: number[] = []
    const search = { ...settings(60_000), workLimit: 1 }
    const answer = await solveAhead(problem, { ...search, onBetter: ({ proof }) => told.push(proof.value) })
    if (answer.kind !== 'solved') throw new Error(answer.kind)
    expect(told[0]).toBe(values[0])
    expect(answer.solved.proof.value).toBeLessThanOrEqual(Math.min(...values) + 1e-6)
    expect(answer.solved.proof.value).toBeLessThan((values[0] ?? 0) / 2)
  })

  it('are the same again for the same seed and work', async () => {
    const problem = randomAhead(12, { practices: 8, themes: 6, designs: 5, players: 6 })
    const counted = () => ({ ...settings(60_000), workLimit: 300 })
    const [one, other] = [await solveAhead(problem, counted()), await solveAhead(problem, counted())]
    expect(JSON.stringify(one)).toBe(JSON.stringify(other))
  })

  it('are proven where nothing is to be chosen', async () => {
    const { proof } = await solved({ ...tiny(1), practices: [] })
    expect(proof.proven).toBe(true)
    expect(proof.value).toBe(planValue(tiny(1), { choices: [], leans: [] }).all)
  })

  it('say which rules stand against each other where there is no plan', async () => {
    const problem = tiny(1)
    const none = { ...problem, themes: problem.themes.map((own) => ({ ...own, firstWeek: 60 })) }
    const answer = await solveAhead(none, settings())
    if (answer.kind !== 'impossible') throw new Error(answer.kind)
    expect(answer.clash.flatMap(({ rules }) => rules)).toContain('firstWeek')
  })

  it('have others nearly as good, each with another theme and kept to the rules', async () => {
    const problem = randomAhead(9, { practices: 4, themes: 6, designs: 5, players: 6, rules: 0 })
    const best = await solved(problem, 400)
    const others = await aheadAlternatives(problem, best, { ...settings(600), practice: 0 })
    const chosen = chosenOffer(problem, best.plan.choices, 0)?.theme
    expect(others.length).toBeGreaterThan(0)
    for (const { solved: other, theme, costs } of others) {
      expect(checkAhead(problem, other.plan.choices)).toEqual([])
      const own = chosenOffer(problem, other.plan.choices, 0)?.theme ?? -1
      expect(own).not.toBe(chosen)
      expect(themeWithAbove(problem.themes, own)).toContain(theme)
      expect(costs).toBeCloseTo(other.proof.value - best.proof.value, 6)
    }
    // With no time at all one other theme is looked at, not all of them.
    const late = await aheadAlternatives(problem, best, { ...settings(0), practice: 0 })
    expect(late.length).toBeLessThanOrEqual(1)
  })
})

function withHeld(
  problem: AheadProblem,
  practice: number,
  held: AheadProblem['practices'][number]['held'],
): AheadProblem {
  return {
    ...problem,
    practices: problem.practices.map((own, at) => (at === practice ? { ...own, held } : own)),
  }
}
