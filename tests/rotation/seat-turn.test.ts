import { describe, expect, it } from 'vitest'
import { cheapestMatching } from '#rotation/cheapest-matching'
import { mayTakeIn } from '#rotation/may-take'
import { resting, stationOf } from '#rotation/place'
import { seatTurn } from '#rotation/seat-turn'
import { aRound, problemOf, smallRequest } from '../support/rotation-builder'
import { seededRandom } from '../support/seeded-random'

describe('the cheapest matching', () => {
  it('is as cheap as the best of all orders', () => {
    const random = seededRandom(11)
    for (let trial = 0; trial < 60; trial += 1) {
      const size = random.whole(1, 6)
      const costs = Float64Array.from({ length: size * size }, () => random.whole(-20, 20))
      const columns = cheapestMatching(size, costs)
      const cost = (order: readonly number[]) =>
        order.reduce((sum, column, row) => sum + (costs[row * size + column] ?? 0), 0)
      expect(new Set(columns).size).toBe(size)
      expect(cost([...columns])).toBe(Math.min(...orders(size).map(cost)))
    }
  })
})

function orders(size: number): number[][] {
  if (size === 0) return [[]]
  return orders(size - 1).flatMap((order) =>
    Array.from({ length: size }, (_, at) => [...order.slice(0, at), size - 1, ...order.slice(at)]),
  )
}

describe('seating a turn', () => {
  const ids = ['p1', 'p2', 'p3', 'p4', 'p5', 'p6']
  const players = ids.map((id) => ({ id }))

  it('keeps pairs apart by stations, or by rest where there is one station', () => {
    const stations = [
      { attack: 2, defend: 1 },
      { attack: 2, defend: 1 },
    ]
    const apart: [string, string][] = [
      ['p1', 'p2'],
      ['p2', 'p3'],
      ['p5', 'p6'],
    ]
    const problem = problemOf(smallRequest({ players, rounds: [aRound({ turns: 1, stations })], apart }))
    const places = seatTurn(problem, mayTakeIn(problem), { turn: 0 }) ?? []
    const at = (player: number) => stationOf(places[player] ?? -1)
    expect([at(0) === at(1), at(1) === at(2), at(4) === at(5)]).toEqual([false, false, false])
    const single = problemOf(
      smallRequest({
        players,
        rounds: [aRound({ turns: 1, stations: [{ attack: 5 }] })],
        apart: [['p1', 'p2']],
      }),
    )
    expect(seatTurn(single, mayTakeIn(single), { turn: 0 })?.slice(0, 2)).toContain(resting)
  })

  it('says so where a pair cannot be kept apart', () => {
    const problem = problemOf(
      smallRequest({
        players,
        rounds: [aRound({ turns: 1, stations: [{ attack: 6 }] })],
        apart: [['p1', 'p2']],
      }),
    )
    expect(seatTurn(problem, mayTakeIn(problem), { turn: 0 })).toBeNull()
  })

  it('takes the cheapest places', () => {
    const problem = problemOf(
      smallRequest({ players, rounds: [aRound({ turns: 1, stations: [{ attack: 2 }] })] }),
    )
    const places = seatTurn(problem, mayTakeIn(problem), {
      turn: 0,
      cost: (player, place) => (place === resting ? player : 0),
    })
    expect(places?.map((place) => place === resting)).toEqual([true, true, true, true, false, false])
  })
})
