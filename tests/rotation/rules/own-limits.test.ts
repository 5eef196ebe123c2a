import { describe, expect, it } from 'vitest'
import { checkPlan } from '#rotation/check-plan'
import { findClash } from '#rotation/clash'
import { mostTurnsOf, restLimitOf } from '#rotation/limits'
import { nearestProblem } from '#rotation/nearest-problem'
import { away, resting, seatPlace } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import type { RotationPlayer, RotationProblem } from '#rotation/problem'
import { leastRestByCounting } from '#rotation/rest-bound'
import { mostTurnsRule } from '#rotation/rules/most-turns-rule'
import { restLimitRule } from '#rotation/rules/rest-limit-rule'
import { restsAfterTurnRule } from '#rotation/rules/rests-after-turn-rule'
import { sayClash } from '#rotation/say-clash'
import { aRound, problemOf, smallRequest } from '../../support/rotation-builder'

const [A, D, R] = [seatPlace(0, 'attack'), seatPlace(0, 'defend'), resting]

/** Three players, one attacker and one defender a turn, with what single players agreed to. */
function threeOf(turns: number, agreed: readonly Partial<RotationPlayer>[]): RotationProblem {
  const problem = problemOf(
    smallRequest({
      players: ['p1', 'p2', 'p3'].map((id) => ({ id })),
      rounds: [aRound({ turns, stations: [{ attack: 1, defend: 1 }] })],
    }),
  )
  return { ...problem, players: problem.players.map((own, index) => ({ ...own, ...agreed[index] })) }
}

const plan: RotationPlan = [
  [A, D, R],
  [A, R, D],
  [R, A, D],
]

describe('at most so many turns', () => {
  it('breaks in every turn beyond them', () => {
    expect(mostTurnsRule(threeOf(3, [{ mostTurns: 1 }]), plan)).toEqual([
      { rule: 'mostTurns', turn: 1, players: [0] },
    ])
    expect(mostTurnsRule(threeOf(3, [{ mostTurns: 2 }, { mostTurns: null }]), plan)).toEqual([])
  })
})

describe('a wait after each turn', () => {
  it('breaks where two turns run; a turn away between them is a wait', () => {
    expect(restsAfterTurnRule(threeOf(3, [{ restsAfterTurn: true }]), plan)).toEqual([
      { rule: 'restsAfterTurn', turn: 1, players: [0] },
    ])
    const gone = plan.map((places, turn) => (turn === 1 ? [places[0] ?? 0, away, D] : places))
    expect(restsAfterTurnRule(threeOf(3, [{}, { restsAfterTurn: true }]), gone)).toEqual([])
  })
})

describe('turns rested before the first', () => {
  it('count for the limit, and a turn away ends them', () => {
    const problem = { ...threeOf(3, [{}, {}, { restedBefore: 2 }]), restLimit: 2 }
    expect(restLimitRule(problem, plan).map(({ turn, players }) => [turn, ...players])).toEqual([[0, 2]])
    const late = plan.map((places, turn) => (turn === 0 ? [A, D, away] : places))
    expect(restLimitRule(problem, late)).toEqual([])
  })

  it('ask for places at once, by counting', () => {
    const rested = threeOf(3, [{ restedBefore: 1 }, { restedBefore: 1 }, { restedBefore: 1 }])
    expect(leastRestByCounting({ ...rested, restLimit: 1 }, 1)).toBe(2)
    expect(leastRestByCounting({ ...threeOf(3, []), restLimit: 1 }, 1)).toBe(1)
  })
})

describe('the limit on rests', () => {
  it('does not tie whoever agreed to too few turns for it, and nobody else waits longer for that', () => {
    const there = Array.from({ length: 12 }, () => true)
    const own = { ...(threeOf(12, []).players[0] as RotationPlayer), present: there }
    expect(restLimitOf(own, 2)).toBe(2)
    expect(restLimitOf({ ...own, mostTurns: 5 }, 2)).toBe(2)
    expect(restLimitOf({ ...own, mostTurns: 4 }, 2)).toBe(Number.POSITIVE_INFINITY)
  })

  it('knows how many turns are left at most', () => {
    const own = threeOf(5, []).players[0] as RotationPlayer
    expect(mostTurnsOf(own)).toBe(5)
    expect(mostTurnsOf({ ...own, restsAfterTurn: true })).toBe(3)
    expect(mostTurnsOf({ ...own, restsAfterTurn: true, mostTurns: 2 })).toBe(2)
    expect(mostTurnsOf({ ...own, restsAfterTurn: true, present: [true, true, false, true, true] })).toBe(2)
  })
})

describe('what was agreed and cannot be kept', () => {
  it('is named, with the player, and the nearest plan has fewer places instead', () => {
    const problem = threeOf(3, [{ mostTurns: 1 }, { mostTurns: 1 }])
    const clash = findClash(problem)
    expect(clash.map((part) => ('player' in part ? [part.rule, part.player] : part.rule))).toEqual([
      ['mostTurns', 0],
      ['mostTurns', 1],
    ])
    expect(sayClash(problem, clash[0] as (typeof clash)[number]).why).toMatch(
      /^No plan was found with at most 1 turns for p1: turn \d could not be filled\.$/,
    )
    const near = nearestProblem(problem)
    expect(near && findClash(near)).toEqual([])
    expect(near?.players.map(({ mostTurns }) => mostTurns)).toEqual([1, 1, undefined])
  })

  it('is no clash where it can', () => {
    expect(findClash(threeOf(3, [{ restsAfterTurn: true }]))).toEqual([])
    expect(checkPlan(threeOf(3, [{ mostTurns: 2 }]), plan)).toEqual([])
  })
})
