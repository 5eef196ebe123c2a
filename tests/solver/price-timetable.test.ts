import { describe, expect, it } from 'vitest'
import { findClash } from '#rotation/clash'
import { mayTakeIn } from '#rotation/may-take'
import type { PlayerNetwork } from '#solver/player-network'
import { type TimetableRows, timetableRows } from '#solver/timetable-rows'
import { problemOf } from '../support/rotation-builder'
import { seededRandom } from '../support/seeded-random'
import { tinyRequest } from '../support/tiny-rotation'

type Path = { readonly arcs: readonly number[]; readonly totals: readonly number[]; readonly cost: number }

/** Every way through a network, by trying all, with its price and its squares. */
function everyPath(rows: TimetableRows, player: number, prices: readonly Float64Array[]): readonly Path[] {
  const network = rows.networks[player] as PlayerNetwork
  const paths: Path[] = []
  const walk = (turn: number, node: number, path: Path) => {
    const arcs = network.arcs[turn]
    if (!arcs) {
      const squares = path.totals.reduce(
        (sum, total, role) => sum + (total - (rows.owed[player]?.[role] ?? 0)) ** 2,
        0,
      )
      paths.push({ ...path, cost: path.cost + squares })
      return
    }
    arcs.forEach(({ from, to, kind }, arc) => {
      if (from !== node) return
      const length = (rows.problem.turns[turn]?.seconds ?? 0) / rows.unitSeconds
      const role = kind === 4 ? 2 : kind
      const totals = path.totals.map((total, index) => (index === role ? total + length : total))
      walk(turn + 1, to, {
        arcs: [...path.arcs, arc],
        totals,
        cost: path.cost + (prices[turn]?.[arc] ?? 0),
      })
    })
  }
  walk(0, 0, { arcs: [], totals: [0, 0, 0, 0], cost: 0 })
  return paths
}

const cases = Array.from({ length: 30 }, (_, index) => index + 1).flatMap((seed) => {
  const problem = problemOf(tinyRequest(seed))
  if (findClash(problem).length > 0) return []
  const random = seededRandom(seed)
  const rows = timetableRows(problem, mayTakeIn(problem), problem.restLimit)
  return problem.players.flatMap((_, player) => {
    const prices = (rows.networks[player]?.arcs ?? []).map((arcs) =>
      Float64Array.from(arcs, () => random.whole(-90, 90)),
    )
    const paths = everyPath(rows, player, prices)
    return paths.length > 0 ? [{ rows, player, prices, paths, seed }] : []
  })
})
const any = { ranges: null, mayGoOn: () => true, below: Number.POSITIVE_INFINITY }

describe('the cheapest timetable of a player', () => {
  it('is the cheapest of all there are, whatever totals are near', () => {
    for (const { rows, player, prices, paths, seed } of cases) {
      const least = Math.min(...paths.map(({ cost }) => cost))
      for (const near of [rows.owed[player] ?? [], [9, 0, 3, 5]]) {
        const found = rows.pricers[player]?.search({ ...any, arcCosts: prices, near, width: 1e6, wanted: 4 })
        expect(found?.found[0]?.cost, `${seed} ${player}`).toBeCloseTo(least, 6)
        expect(found?.bound).toBeCloseTo(least, 6)
        for (const { arcs, cost } of found?.found ?? [])
          expect(paths.find((path) => path.arcs.join() === arcs.join())?.cost).toBeCloseTo(cost, 6)
      }
    }
  })

  it('has a bound that holds when few labels are kept, and for each arc', () => {
    for (const { rows, player, prices, paths } of cases) {
      const least = Math.min(...paths.map(({ cost }) => cost))
      const near = rows.owed[player] ?? []
      const narrow = rows.pricers[player]?.search({ ...any, arcCosts: prices, near, width: 2, wanted: 1 })
      expect(narrow?.bound).toBeLessThanOrEqual(least + 1e-6)
      const bounds = rows.pricers[player]?.arcBounds({ arcCosts: prices, near }) ?? []
      for (const { arcs, cost } of paths)
        arcs.forEach((arc, turn) => {
          expect(bounds[turn]?.[arc]).toBeLessThanOrEqual(cost + 1e-6)
        })
    }
  })

  it('keeps to the totals that are asked', () => {
    for (const { rows, player, prices, paths } of cases) {
      const most = Math.floor((paths[0]?.totals[3] ?? 0) / 2)
      const free = { least: 0, most: Number.POSITIVE_INFINITY }
      const ranges = [free, free, free, { least: 0, most }]
      const least = Math.min(
        ...paths.filter(({ totals }) => (totals[3] ?? 0) <= most).map(({ cost }) => cost),
      )
      const near = rows.owed[player] ?? []
      const found = rows.pricers[player]?.search({
        ...any,
        arcCosts: prices,
        near,
        ranges,
        width: 1e6,
        wanted: 1,
      })
      if (Number.isFinite(least)) expect(found?.found[0]?.cost).toBeCloseTo(least, 6)
      else expect(found?.found).toEqual([])
    }
  })
})
