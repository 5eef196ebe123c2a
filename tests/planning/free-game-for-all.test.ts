import { describe, expect, it } from 'vitest'
import { isFreeGameForAll, keepingFreeGame, withFreeGameForAll } from '#planning/free-game-for-all'
import { planFaults } from '#planning/plan-faults'
import { proofOfPlan } from '#planning/plan-proof'
import { plannedTurns } from '#planning/planned-turns'
import type { PlanRequest } from '#planning/practice-plan'
import { quickPlan } from '#planning/quick-plan'
import { placesOfAll } from '#practice/round-places'
import { aFreeGame, aPlanRequest, aPlanRound, randomPlanRequest } from '../support/plan-builder'

// That everybody plays the game that ends a practice is common practice, no source; the counts below are by hand.
const gameOf = (request: PlanRequest) => request.design.rounds.at(-1)?.stations

/** How many wait in each half, once the request is planned. */
function waitingIn(request: PlanRequest): readonly number[] {
  const quick = quickPlan(request)
  if (!quick.ok) throw new Error('no plan')
  const turns = plannedTurns(request, quick.value.plan)
  const proof = proofOfPlan(quick.value.problem, { ...quick.value, bound: 0 })
  expect(planFaults({ ...request, turns, proof })).toEqual([])
  return turns.slice(-2).map(({ stations }) => {
    const seated = stations.flatMap(({ attack, defend, keep }) => [...attack, ...defend, ...keep])
    return request.players.length - new Set(seated).size
  })
}

describe('a free game for everybody', () => {
  it.each([
    [7, { attack: 3, defend: 3, keep: 1 }],
    [10, { attack: 5, defend: 4, keep: 1 }],
    [14, { attack: 7, defend: 6, keep: 1 }],
  ])('with %i is played by all of them, and nobody waits', (players, shape) => {
    const request = withFreeGameForAll(aPlanRequest({ players }))
    expect(gameOf(request)).toEqual([shape])
    expect(waitingIn(request)).toEqual([0, 0])
    expect(isFreeGameForAll(request)).toBe(true)
  })

  it('has no goalkeeper where nobody may be one', () => {
    const own = Object.fromEntries([1, 2, 3, 4, 5, 6, 7, 8].map((player) => [player, { notInGoal: true }]))
    const rounds = [aPlanRound({ stations: [{ attack: 2, defend: 1, keep: 0 }] }), aFreeGame]
    const request = withFreeGameForAll(aPlanRequest({ players: 8, rounds, own }))
    expect(gameOf(request)).toEqual([{ attack: 4, defend: 4, keep: 0 }])
  })

  it('leaves one out where two are kept apart, and one for each two who wait after each turn', () => {
    const apart = withFreeGameForAll(aPlanRequest({ players: 12, apart: [['p1', 'p2']] }))
    expect(waitingIn(apart)).toEqual([1, 1])
    const own = { 1: { waitsAfterEachTurn: true }, 2: { waitsAfterEachTurn: true } }
    expect(waitingIn(withFreeGameForAll(aPlanRequest({ players: 12, own })))).toEqual([1, 1])
  })

  it('is as large for each side as it has players, in both halves', () => {
    const own = Object.fromEntries(
      Array.from({ length: 11 }, (_, index) => [index + 1, { side: index < 6 ? 0 : 1 } as const]),
    )
    const game = { ...aFreeGame, stations: [{ attack: 3, defend: 3, keep: 0 }] }
    // One round before it: the sides have changed over, and the five attack first.
    const before = aPlanRound({ stations: [{ attack: 2, defend: 2, keep: 0 }] })
    const plain = aPlanRequest({ players: 11, rounds: [before, game], own })
    const sides = { names: ['Red', 'Blue'], swap: 'eachRound' } as const
    const request = withFreeGameForAll({
      ...plain,
      design: { ...plain.design, sides },
      rules: { ...plain.rules, keepsSides: true },
    })
    expect(gameOf(request)).toEqual([{ attack: 5, defend: 6, keep: 0 }])
    expect(waitingIn(request)).toEqual([0, 0])
  })

  it('can be played, by as many as can, for 30 requests drawn at random', () => {
    const games = Array.from({ length: 30 }, (_, seed) => randomPlanRequest(seed)).filter((request) =>
      request.design.rounds.some(({ isFreeGame }) => isFreeGame),
    )
    expect(games.length).toBeGreaterThan(12)
    const seats = (request: PlanRequest) => placesOfAll(gameOf(request) ?? []).all
    for (const request of games) {
      const full = withFreeGameForAll(request)
      expect(quickPlan(full).ok || !quickPlan(request).ok).toBe(true)
      expect(seats(full)).toBeGreaterThanOrEqual(Math.min(seats(request), request.players.length - 2))
    }
  })
})

describe('a change of what is asked', () => {
  const without = (request: PlanRequest) => ({ ...request, players: request.players.slice(0, 9) })

  it('keeps the game for everybody where it was, and as it was drawn where not', () => {
    const drawn = aPlanRequest({ players: 12 })
    const full = withFreeGameForAll(drawn)
    expect(gameOf(keepingFreeGame(full, without(full)))).toEqual([{ attack: 4, defend: 4, keep: 1 }])
    expect(gameOf(keepingFreeGame(drawn, without(drawn)))).toEqual(aFreeGame.stations)
  })

  it('to another design makes its game one for everybody', () => {
    const drawn = aPlanRequest({ players: 12 })
    const other = { ...drawn, design: { ...drawn.design, id: 'other' } }
    expect(gameOf(keepingFreeGame(drawn, other))).toEqual([{ attack: 6, defend: 5, keep: 1 }])
  })
})
