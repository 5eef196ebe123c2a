import { describe, expect, it } from 'vitest'
import { isColumnInside } from '#ahead/chance/is-inside'
import { checkAhead } from '#ahead/check-ahead'
import { expectedEnd } from '#ahead/expected-end'
import { planValue } from '#ahead/plan-value'
import type { AheadPractice, AheadProblem } from '#ahead/problem'
import { quickAhead } from '#ahead/quick-plan'
import { noSeats } from '#ahead/seat-column'
import { rotationColumns } from '#rotation/problem'
import { aheadModel, exactBins, oneBin } from '#solver/ahead-model'
import { bestLeans } from '#solver/best-leans'
import { loadSolver } from '#solver/highs'
import { reachableEnds } from '#solver/reachable'
import { randomAhead } from '../support/random-ahead'

const solver = await loadSolver()
const relaxed = { timeMs: 20_000, work: null, seed: 1, isRelaxed: true }

function boundOf(problem: AheadProblem): number {
  const { status, bound } = solver.solve(aheadModel(problem, oneBin(problem)).linear, relaxed)
  expect(status).toBe('optimal')
  return bound
}

/** A practice that may be left out: among its offers is one of nothing, of a theme that nobody asked for. */
function withOneMore(problem: AheadProblem, more: AheadPractice): AheadProblem {
  const [theme, design] = [problem.themes.length, problem.designs.length]
  const nothing = { theme, design, seats: noSeats, liveSeconds: 0 }
  const free = { id: 'free', name: 'Free', parent: null, wishedShare: 0, firstWeek: null, lastWeek: null }
  return {
    ...problem,
    practices: [...problem.practices, { ...more, offers: [...more.offers, nothing] }],
    themes: [...problem.themes, { ...free, after: null, leastWeeksBetween: null, mostWeeksBetween: null }],
    designs: [...problem.designs, { id: 'nothing', name: 'Nothing' }],
    players: problem.players.map((own) => ({ ...own, themeSeconds: [...own.themeSeconds, 0] })),
  }
}

describe('bounds of the weeks ahead', () => {
  it('are never raised by one more practice that may be left out', () => {
    for (let seed = 1; seed <= 3; seed++) {
      const whole = randomAhead(seed, { practices: 4, themes: 5, designs: 4, players: 6, rules: 0 })
      const [last, ...others] = [...whole.practices].reverse()
      if (!last) throw new Error('There is no practice.')
      const fewer = { ...whole, practices: others.reverse() }
      const before = boundOf(fewer)
      expect(boundOf(withOneMore(fewer, last))).toBeLessThanOrEqual(before + 1e-6 * (1 + before))
    }
  })

  it('rise from all practices together to each by itself, and stay below every plan', () => {
    for (let seed = 11; seed <= 12; seed++) {
      const problem = randomAhead(seed, { practices: 4, themes: 5, designs: 4, players: 6 })
      const plan = quickAhead(problem, { seed: 1 })
      if (!plan) throw new Error('No plan was found.')
      const own = solver.solve(aheadModel(problem, exactBins(problem)).linear, relaxed).bound
      const best = bestLeans(problem, plan.choices, { solver, timeMs: 20_000 })
      const value = planValue(problem, best.plan).all
      expect(boundOf(problem)).toBeLessThanOrEqual(own + 1e-6 * (1 + own))
      expect(own).toBeLessThanOrEqual(value + 1e-6 * (1 + value))
      expect(value).toBeLessThanOrEqual(planValue(problem, plan).all + 1e-9)
    }
  })

  it('say of each gap whether some plan brings it inside, and how little must stay outside', async () => {
    const problem = randomAhead(15, { practices: 3, themes: 3, designs: 4, players: 6 })
    const far = {
      ...problem,
      players: problem.players.map((own, at) => {
        if (at > 1) return own
        // More than any practice could bring: what one has too much, another has too little.
        return { ...own, gap: { ...own.gap, attack: (at === 0 ? -1 : 1) * 100_000 } }
      }),
    }
    const settings = { seed: 1, timeLimitMs: 4000, workLimit: null, began: performance.now() }
    const { players, outside } = await reachableEnds(far, settings)
    expect(players[0]?.attack).toBe('no')
    // Much attacking raises no flag.
    expect(players[1]?.attack).toBe('yes')
    expect(outside.bound).toBeLessThanOrEqual(outside.value)
    expect(outside.bound).toBeGreaterThan(100)
    // What a plan shows is never said to be out of reach.
    const plan = quickAhead(far, { seed: 1 })
    if (!plan) throw new Error('No plan was found.')
    expect(checkAhead(far, plan.choices)).toEqual([])
    expectedEnd(far, plan).forEach((end, player) => {
      for (const column of rotationColumns)
        if (
          isColumnInside(column, {
            gap: end.gap[column],
            tolerance: far.players[player]?.tolerance[column] ?? 0,
          })
        )
          expect(players[player]?.[column]).toBe('yes')
    })
  })
})
