import { describe, expect, it } from 'vitest'
import { seededChance } from '#common/chance'
import { checkLineUp } from '#lineup/check-line-up'
import { fairLineUp } from '#lineup/fair-line-up'
import { findLineUpClash } from '#lineup/find-line-up-clash'
import { layFirstLineUp } from '#lineup/first-line-up'
import { boardOf, planOfBoard } from '#lineup/line-up-board'
import { lineUpBounds } from '#lineup/line-up-bounds'
import { lineUpValues, secondsOf } from '#lineup/line-up-values'
import type { LineUpProblem } from '#lineup/problem'
import { quickLineUp } from '#lineup/quick-line-up'
import { rowFields } from '#lineup/row-values'
import { drawSwap } from '#lineup/swap'
import { swapBoard } from '#lineup/swap-board'
import { placesInAll } from '#match/format/places-in-all'
import { laterLineUp } from '../support/later-line-up'
import { smallLineUp } from '../support/line-up-builder'
import { randomLineUp } from '../support/random-line-up'

/** Random problems, and what is left of them from their middle on. */
const problems = Array.from({ length: 24 }, (_, index): LineUpProblem => {
  const problem = randomLineUp(index + 1, { areEqual: index % 3 === 0 })
  if (index % 2 === 0) return problem
  const board = boardOf(problem)
  return layFirstLineUp(board)
    ? laterLineUp(
        problem,
        planOfBoard(board),
        Math.ceil(problem.windows.length / 2) + (index % 4 === 1 ? 0 : 1),
      )
    : problem
})

describe('the board of a search', () => {
  // Two ways to the same figures: the board reads rows with running sums, the values and rules are written from their definitions.
  it('comes to the values and faults that the rules find, after any swaps', () => {
    let kept = 0
    for (const [index, problem] of problems.entries()) {
      const board = boardOf(problem)
      if (!layFirstLineUp(board)) continue
      const swaps = swapBoard(board)
      const chance = seededChance(index)
      for (let step = 0; step < 60; step += 1) {
        const swap = drawSwap(board, chance)
        if (!swaps.mayTry(swap)) continue
        swaps.tryOut(swap)
        if (chance() < 0.3) swaps.undo(swap)
        else swaps.keep(swap)
        const plan = planOfBoard(board)
        const total = swaps.total()
        const values = lineUpValues(problem, plan)
        const fields = ['promise', 'minutes', 'goal', 'starts', 'lines', 'changes'] as const
        for (const field of fields) expect(total[rowFields[field]]).toBeCloseTo(values[field], 3)
        expect((total[rowFields.broken] ?? 0) > 1e-9).toBe(checkLineUp(problem, plan).length > 0)
        kept += 1
      }
    }
    expect(kept).toBeGreaterThan(400)
  })
})

describe('a line-up at once', () => {
  const some = problems.slice(0, 10)
  const plans = some.map((problem) => quickLineUp(problem, { seed: 1 }))

  it('keeps every rule, fills every place at every second, and the books balance', () => {
    let found = 0
    for (const [index, problem] of some.entries()) {
      const plan = plans[index]
      if (!plan) continue
      found += 1
      expect(checkLineUp(problem, plan)).toEqual([])
      const played = problem.players.reduce((sum, _, player) => sum + secondsOf(problem, plan[player]), 0)
      const due = fairLineUp(problem).play.reduce((sum, seconds) => sum + seconds, 0)
      const filled = problem.windows.reduce(
        (sum, { start, end, places }) => sum + placesInAll(places) * (end - start),
        0,
      )
      expect(played).toBe(filled)
      expect(due).toBeCloseTo(filled, 6)
    }
    expect(found).toBeGreaterThanOrEqual(8)
  })

  it('is found only where arithmetic knows no reason against it', () => {
    for (const [index, problem] of some.entries()) {
      const plan = plans[index]
      const against = findLineUpClash(problem)
      if (plan) expect(against).toEqual([])
    }
  })

  it('is the same for the same seed', () => {
    const [problem] = some
    if (problem) expect(quickLineUp(problem, { seed: 1 })).toEqual(plans[0])
  })

  it('is never better than arithmetic allows', () => {
    for (const [index, problem] of some.entries()) {
      const plan = plans[index]
      if (!plan) continue
      const values = lineUpValues(problem, plan)
      const bounds = lineUpBounds(problem, values)
      expect(bounds.promise).toBeLessThanOrEqual(values.promise)
      if (bounds.promise === values.promise) expect(bounds.minutes).toBeLessThanOrEqual(values.minutes + 1e-6)
      expect(bounds.goal).toBeLessThanOrEqual(values.goal + 1e-6)
      expect(bounds.starts).toBeLessThanOrEqual(values.starts + 1e-6)
    }
  })
})

describe('feasibility arithmetic of seven a side', () => {
  const sevenOn = { keeper: 1, back: 2, middle: 3, forward: 1 }
  const secondsPlayed = (problem: LineUpProblem) => {
    const plan = quickLineUp(problem, { seed: 1 })
    return problem.players.map((_, player) => secondsOf(problem, plan?.[player])).sort((a, b) => a - b)
  }

  // Rule: three of four quarters where mathematically possible (a region's own rule, ayso76.org). Possible for all only
  // while 3 · players <= 4 · 7. Own arithmetic: 28 = 8 · 3 + 2 · 2.
  it('ten in four quarters: eight play three, two play two, nobody four', () => {
    const quarters = smallLineUp({ count: 10, periods: 4, windows: 1, seconds: 600, places: sevenOn })
    expect(secondsPlayed(quarters)).toEqual([1200, 1200, ...Array.from({ length: 8 }, () => 1800)])
  })

  // 2 × 25 minutes, nine players: 350 player-minutes, an even share of 38.89, 100 minutes off in all.
  it('nine in two halves of 25 minutes: 38.89 minutes are due, 100 minutes are off', () => {
    const halves = smallLineUp({ count: 9, periods: 2, windows: 5, seconds: 300, places: sevenOn })
    for (const due of fairLineUp(halves).play) expect(due / 60).toBeCloseTo(38.89, 2)
    const played = secondsPlayed(halves)
    expect(9 * 50 - played.reduce((sum, seconds) => sum + seconds, 0) / 60).toBe(100)
    expect([played[0], played[8]]).toEqual([2100, 2400])
  })

  // Rule: at least half of every match (AYSO national rules, aysovolunteers.org). Own arithmetic: possible for all up to
  // twice as many as play, fourteen here.
  it('half of the match for all: fourteen have it, fifteen cannot', () => {
    const promised = (count: number) =>
      smallLineUp({
        count,
        periods: 2,
        windows: 1,
        seconds: 1500,
        places: sevenOn,
        players: Array.from({ length: count }, () => ({ leastSeconds: 1500 })),
      })
    expect(secondsPlayed(promised(14))).toEqual(Array.from({ length: 14 }, () => 1500))
    const plan = quickLineUp(promised(15), { seed: 1 })
    expect(plan && lineUpValues(promised(15), plan).promise).toBe(1500)
  })
})
