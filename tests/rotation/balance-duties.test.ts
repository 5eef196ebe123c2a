import { describe, expect, it } from 'vitest'
import { balanceDuties } from '#rotation/balance-duties'
import { mayTakeIn } from '#rotation/may-take'
import { aRound, problemOf, smallRequest } from '../support/rotation-builder'

const rounds = [aRound({ turns: 2, keepersStay: true }), aRound({ id: 'r2', turns: 3, keepersStay: true })]

describe('who should keep through a round', () => {
  it('the longest duty for whoever is owed most, the others after that', () => {
    const problem = problemOf(smallRequest({ rounds }))
    expect(balanceDuties(problem, mayTakeIn(problem), [0, 80, 120, 10])).toEqual([1, 2])
  })

  it('nobody who may not keep, nor who is fixed elsewhere meanwhile', () => {
    const players = [{ id: 'p1', keeps: false }, { id: 'p2' }, { id: 'p3', keeps: false }, { id: 'p4' }]
    const fixed = [{ turn: 4, station: 1, role: 'attack' as const, player: 'p2' }]
    const problem = problemOf(smallRequest({ rounds, players, fixed }))
    expect(balanceDuties(problem, mayTakeIn(problem), [500, 100, 500, 0])).toEqual([1, 3])
  })
})
