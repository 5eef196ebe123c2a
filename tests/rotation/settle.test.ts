import { describe, expect, it } from 'vitest'
import { layOut, planOf } from '#rotation/board'
import { checkPlan } from '#rotation/check-plan'
import { findClash } from '#rotation/clash'
import { makeExchange } from '#rotation/exchange'
import { firstPlan } from '#rotation/first-plan'
import { mayTakeIn } from '#rotation/may-take'
import { planValues } from '#rotation/plan-values'
import { settle } from '#rotation/settle'
import { randomRotation } from '../support/random-rotation'
import { problemOf } from '../support/rotation-builder'
import { seededRandom } from '../support/seeded-random'

const possible = Array.from({ length: 40 }, (_, index) => problemOf(randomRotation(index + 1))).filter(
  (problem) => findClash(problem).length === 0,
)

describe('a first plan', () => {
  it('breaks no rule but, it may be, the limit on rests', () => {
    for (const problem of possible) {
      const plan = firstPlan(problem, mayTakeIn(problem), { waitingWeight: 1, restLimit: problem.restLimit })
      expect(checkPlan({ ...problem, restLimit: null }, plan ?? [])).toEqual([])
    }
  })
})

describe('a settled plan', () => {
  it('keeps every rule and is never less fair', () => {
    for (const problem of possible) {
      const plan = firstPlan(problem, mayTakeIn(problem), { waitingWeight: 1, restLimit: null }) ?? []
      const board = layOut(problem, plan)
      settle(board, null)
      const settled = planOf(board)
      expect(checkPlan({ ...problem, restLimit: null }, settled)).toEqual([])
      expect(planValues(problem, settled).unfairness).toBeLessThanOrEqual(
        planValues(problem, plan).unfairness + 1e-6,
      )
      expect(settle(layOut(problem, settled), null)).toBe(0)
    }
  })
})

describe('a board', () => {
  it('has the sums of its plan after a thousand exchanges there and back', () => {
    const random = seededRandom(3)
    for (const problem of possible.slice(0, 10)) {
      const plan = firstPlan(problem, mayTakeIn(problem), { waitingWeight: 1, restLimit: null }) ?? []
      const board = layOut(problem, plan)
      for (let tried = 0; tried < 1000; tried += 1) {
        const [one, other] = [random.whole(0, board.players - 1), random.whole(0, board.players - 1)]
        const turn = random.whole(0, board.turns - 1)
        const [mine = -1, theirs = -1] = [one, other].map(
          (player) => board.place[turn * board.players + player],
        )
        if (mine < 0 || theirs < 0 || mine === theirs) continue
        makeExchange(board, { one, other, turns: [turn] })
      }
      const fresh = layOut(problem, planOf(board))
      expect([...board.together]).toEqual([...fresh.together])
      board.left.forEach((left, index) => {
        expect(left).toBeCloseTo(fresh.left[index] ?? Number.NaN, 6)
      })
    }
  })
})
