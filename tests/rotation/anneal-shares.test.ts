import { describe, expect, it } from 'vitest'
import { seededChance } from '#common/chance'
import { annealShares } from '#rotation/anneal-shares'
import { layOut, planOf } from '#rotation/board'
import { checkPlan } from '#rotation/check-plan'
import { findClash } from '#rotation/clash'
import { firstPlan } from '#rotation/first-plan'
import { mayTakeIn } from '#rotation/may-take'
import { planValues } from '#rotation/plan-values'
import { randomRotation } from '../support/random-rotation'
import { problemOf } from '../support/rotation-builder'

const possible = Array.from({ length: 30 }, (_, index) => problemOf(randomRotation(index + 201))).filter(
  (problem) => findClash(problem).length === 0,
)

describe('exchanges for even shares', () => {
  it('keep every rule, never end less fair, and leave the right sums on the board', () => {
    let fairer = 0
    for (const [seed, problem] of possible.entries()) {
      const plan = firstPlan(problem, mayTakeIn(problem), { waitingWeight: 1, restLimit: null }) ?? []
      const board = layOut(problem, plan)
      annealShares(board, {
        restLimit: null,
        tries: 15_000,
        chance: seededChance(seed),
        mayGoOn: () => true,
      })
      const after = planOf(board)
      expect(checkPlan({ ...problem, restLimit: null }, after)).toEqual([])
      const [before, now] = [planValues(problem, plan).unfairness, planValues(problem, after).unfairness]
      expect(now).toBeLessThanOrEqual(before + 1e-6)
      if (now < before) fairer += 1
      const fresh = layOut(problem, after)
      expect([...board.together]).toEqual([...fresh.together])
      board.left.forEach((left, index) => {
        expect(left).toBeCloseTo(fresh.left[index] ?? Number.NaN, 6)
      })
    }
    expect(fairer).toBeGreaterThan(possible.length / 2)
  })

  it('never make rests beyond the limit longer, and mend most of them', () => {
    let mended = 0
    for (const [seed, problem] of possible.entries()) {
      const limit = problem.restLimit ?? 2
      const plan = firstPlan(problem, mayTakeIn(problem), { waitingWeight: 0, restLimit: null }) ?? []
      const board = layOut(problem, plan)
      const beyond = () =>
        checkPlan({ ...problem, restLimit: limit }, planOf(board)).filter(({ rule }) => rule === 'restLimit')
          .length
      const before = beyond()
      annealShares(board, {
        restLimit: limit,
        tries: 15_000,
        chance: seededChance(seed),
        mayGoOn: () => true,
        stopWhenMended: true,
      })
      if (beyond() === 0 && before > 0) mended += 1
      expect(checkPlan({ ...problem, restLimit: null }, planOf(board))).toEqual([])
    }
    expect(mended).toBeGreaterThan(5)
  })
})
