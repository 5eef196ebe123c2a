import { describe, expect, it } from 'vitest'
import { layOut, planOf } from '#rotation/board'
import { checkPlan } from '#rotation/check-plan'
import { goesTwice } from '#rotation/goes-twice'
import { resting, seatPlace } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import { spreadTurns } from '#rotation/spread-turns'
import { togetherTurns } from '#rotation/together-turns'
import { solveRotation } from '#solver/solve-rotation'
import { aRound, problemOf, smallRequest } from '../support/rotation-builder'

const [A, D, R] = [seatPlace(0, 'attack'), seatPlace(0, 'defend'), resting]
const ids = (count: number) => Array.from({ length: count }, (_, index) => ({ id: `p${index + 1}` }))

/** Six against five, one against one, six balls: all six attack once, of the five defenders one has to go twice. */
function sixAndFive(): RotationProblem {
  const names = ids(11).map(({ id }) => id)
  const sides = { attack: names.slice(0, 6), defend: names.slice(6) }
  const round = aRound({ turns: 6, stations: [{ attack: 1, defend: 1 }], sides })
  const problem = problemOf(smallRequest({ players: ids(11), rounds: [round], restLimit: null }))
  return { ...problem, rounds: problem.rounds.map((own) => ({ ...own, isSpread: true })) }
}

describe('uneven sides', () => {
  it('say who goes twice', async () => {
    const problem = sixAndFive()
    const found = await solveRotation(problem, {
      seed: 1,
      timeLimitMs: 5000,
      workLimit: null,
      began: performance.now(),
    })
    const [only, ...others] = goesTwice(problem, found.plan)
    expect(others).toEqual([])
    expect([only?.round, only?.role, only?.others, only?.players.length]).toEqual([0, 'defend', 1, 1])
    const player = only?.players[0] ?? -1
    const running = found.plan.filter(
      (places, turn) => turn > 0 && places[player] === D && found.plan[turn - 1]?.[player] === D,
    )
    expect(running).toEqual([])
  })

  it('never let the same player go twice running where that costs nothing', () => {
    const problem = sixAndFive()
    const defenders = [6, 6, 7, 8, 9, 10]
    const plan: RotationPlan = defenders.map((defender, turn) =>
      problem.players.map((_, player) => (player === turn ? A : player === defender ? D : R)),
    )
    const board = layOut(problem, plan)
    expect(spreadTurns(board, { restLimit: null, most: 1000 })).toBeGreaterThan(0)
    const spread = planOf(board)
    expect(checkPlan(problem, spread)).toEqual([])
    expect(planValues(problem, spread).unfairness).toBeCloseTo(planValues(problem, plan).unfairness, 6)
    spread.slice(1).forEach((places, turn) => {
      expect(places.indexOf(D)).not.toBe(spread[turn]?.indexOf(D))
    })
  })

  it('are not spoken of where all go equally often', () => {
    const problem = sixAndFive()
    const even: RotationProblem = { ...problem, turns: problem.turns.slice(0, 5) }
    const plan = Array.from({ length: 5 }, (_, turn) =>
      problem.players.map((_, player) => (player === turn ? A : player === 6 + turn ? D : R)),
    )
    expect(goesTwice(even, plan).map(({ role }) => role)).toEqual(['attack'])
  })
})

describe('a pair that should be together', () => {
  it('is so more often, and nothing is less fair for it', async () => {
    const rounds = [aRound({ turns: 12, stations: [{ attack: 3, defend: 2, keep: 1 }] })]
    const plain = problemOf(smallRequest({ players: ids(9), rounds }))
    const wished: RotationProblem = { ...plain, together: [[0, 1]] }
    const solve = (problem: RotationProblem) =>
      solveRotation(problem, { seed: 3, timeLimitMs: 4000, workLimit: 300, began: performance.now() })
    const [without, found] = [await solve(plain), await solve(wished)]
    const turns = (plan: RotationPlan) => togetherTurns(wished, plan)[0]?.turns ?? 0
    expect(turns(found.plan)).toBeGreaterThan(turns(without.plan))
    expect(togetherTurns(wished, found.plan)).toEqual([{ pair: [0, 1], turns: turns(found.plan), of: 12 }])
    expect(found.unfairness.value).toBeCloseTo(without.unfairness.value, 3)
    expect(found.situationUnfairness.value).toBeLessThanOrEqual(without.situationUnfairness.value + 1e-3)
  })
})
