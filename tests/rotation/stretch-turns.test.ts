import { describe, expect, it } from 'vitest'
import { findClash } from '#rotation/clash'
import { turnsToGrow, turnsToShrink, withStations } from '#rotation/stretch-turns'
import { aRound, problemOf, smallRequest } from '../support/rotation-builder'

const ids = (count: number) => Array.from({ length: count }, (_, index) => ({ id: `p${index + 1}` }))

describe('turns of another size', () => {
  it('smaller where too few are there, as sides and who may keep allow', () => {
    // Three may attack, two may defend: 4 against 1 would have five places, too, and cannot be.
    const sides = { attack: ['p1', 'p2', 'p3'], defend: ['p4', 'p5'] }
    const rounds = [aRound({ turns: 2, stations: [{ attack: 4, defend: 2 }], sides })]
    const problem = problemOf(smallRequest({ players: ids(5), rounds }))
    const [only, ...others] = turnsToShrink(problem, 0)
    expect(others).toEqual([])
    expect(only?.turns).toEqual([0, 1])
    for (const { stations } of only?.proposals ?? []) {
      expect(stations[0]?.attack).toBeLessThanOrEqual(3)
      expect(findClash(withStations(problem, only?.turns ?? [], stations))).toEqual([])
    }
    expect(only?.proposals.length).toBeGreaterThan(1)
    expect(turnsToShrink(problem, 2)).toEqual([])
  })

  it('larger where more wait than half the places', () => {
    const rounds = [
      aRound({ turns: 2, stations: [{ attack: 2, defend: 1 }] }),
      aRound({ id: 'r2', turns: 1, stations: [{ attack: 3, defend: 3 }] }),
    ]
    const problem = problemOf(smallRequest({ players: ids(8), rounds }))
    const grown = turnsToGrow(problem, 1)
    expect(grown.map(({ round, turns }) => [round, turns])).toEqual([[0, [1]]])
    expect(grown[0]?.proposals[0]?.keepsKind).toBe(true)
    expect(grown[0]?.proposals[0]?.waiting).toBeLessThan(5)
  })
})
