import { describe, expect, it } from 'vitest'
import { checkPlan } from '#rotation/check-plan'
import { findClash } from '#rotation/clash'
import { keepAreas, walksBetween } from '#rotation/keep-areas'
import { resting, seatPlace, stationOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import { replanTail } from '#rotation/replan-tail'
import { randomRotation } from '../support/random-rotation'
import { aRound, problemOf, smallRequest } from '../support/rotation-builder'

const planned = Array.from({ length: 60 }, (_, index) => problemOf(randomRotation(index + 1, { turns: 12 })))
  .filter((problem) => findClash(problem).length === 0)
  .flatMap((problem) => {
    const tail = replanTail(problem, { old: [], seed: 1, tries: 2000 })
    return tail ? [{ problem, ...tail }] : []
  })

describe('areas kept from turn to turn', () => {
  it('change neither rules nor values, and make nobody walk more, in plans drawn at random', () => {
    expect(planned.length).toBeGreaterThan(45)
    let [before, after] = [0, 0]
    for (const { problem, plan, restLimitUsed } of planned) {
      const kept = keepAreas(problem, plan)
      expect(checkPlan({ ...problem, restLimit: restLimitUsed }, kept)).toEqual([])
      expect(planValues(problem, kept)).toEqual(planValues(problem, plan))
      expect(keepAreas(problem, plan, 4).slice(0, 4)).toEqual(plan.slice(0, 4))
      before += walksBetween(problem, plan)
      after += walksBetween(problem, kept)
    }
    expect(after).toBeLessThan(before)
  })

  it('are numbered as well as any numbering, tried one by one', () => {
    const stations = Array.from({ length: 3 }, () => ({ attack: 2, defend: 1, keep: 0 }))
    const players = Array.from({ length: 11 }, (_, index) => ({ id: `p${index}` }))
    const problem = problemOf(smallRequest({ players, rounds: [aRound({ turns: 2, stations })] }))
    for (let seed = 1; seed <= 40; seed += 1) {
      const plan = replanTail(problem, { old: [], seed, tries: 300 })?.plan ?? []
      const least = Math.min(...orders.map((order) => walksBetween(problem, numbered(plan, order))))
      expect(walksBetween(problem, keepAreas(problem, plan))).toBe(least)
    }
  })

  it('keep their number where a place is held fast, or a goalkeeper stays', () => {
    const stations = [1, 1, 1].map((keep) => ({ attack: 1, defend: 0, keep }))
    const players = Array.from({ length: 6 }, (_, index) => ({ id: `p${index}`, keeps: true }))
    const round = aRound({ turns: 2, stations, keepersStay: true })
    const staying = problemOf(smallRequest({ players, rounds: [round] }))
    const [a, b, c] = [0, 1, 2].map((station) => seatPlace(station, 'attack')) as [number, number, number]
    const keepers = [0, 1, 2].map((station) => seatPlace(station, 'keep'))
    const plan = [
      [a, b, c, ...keepers],
      [b, a, c, ...keepers],
    ]
    expect(keepAreas(staying, plan)).toEqual(plan)
    const open = { ...staying, rounds: staying.rounds.map((own) => ({ ...own, keepersStay: false })) }
    const held: RotationProblem = { ...open, fixed: [{ turn: 1, player: 0, place: b }] }
    expect(keepAreas(held, plan)).toEqual(plan)
  })
})

const orders = [
  [0, 1, 2],
  [0, 2, 1],
  [1, 0, 2],
  [1, 2, 0],
  [2, 0, 1],
  [2, 1, 0],
] as const

/** The plan with the stations of its second turn in another order. */
function numbered(plan: RotationPlan, order: readonly number[]): RotationPlan {
  const [first = [], second = []] = plan
  const moved = (place: number) =>
    place <= resting ? place : place + 3 * ((order[stationOf(place)] ?? 0) - stationOf(place))
  return [first, second.map(moved)]
}
