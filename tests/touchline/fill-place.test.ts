import { describe, expect, test } from 'vitest'
import { fillPlace } from '#touchline/fill-place'
import { foldMatch } from '#touchline/fold-match'
import type { MatchDeed } from '#touchline/match-deed'
import { kickOff, matchId, packOf, planFor, requestOf, stateAt, taps } from '../support/tapped-match'

type Tap = readonly [number, MatchDeed]
const policy = { policy: { leastMatchShare: 0.5 } }
const pack = packOf(planFor(requestOf(9)))
const first = kickOff(foldMatch(pack, []))
const off = (playerId: string, second: number, state: 'notPlaying' | 'out' = 'notPlaying'): Tap => [
  second,
  { kind: 'register', playerId, state },
]

describe('fillPlace', () => {
  test('nothing is empty: nothing to fill', () => {
    expect(fillPlace(stateAt(pack, taps([0, first]), 30), policy)).toBeNull()
  })

  test('the one who has had least comes on, in the line of who went off', () => {
    const hurt = stateAt(pack, taps([0, first]), 30).on.find(({ line }) => line === 'back')?.playerId ?? ''
    const state = stateAt(pack, taps([0, first], off(hurt, 30)), 31)
    const filled = fillPlace(state, policy)
    expect(filled?.on).toHaveLength(7)
    expect(filled?.comesOn).toHaveLength(1)
    expect(filled?.comesOn[0]?.line).toBe('back')
    const player = state.players.find(({ id }) => id === filled?.comesOn[0]?.playerId)
    const waiting = state.players.filter(({ line, state: how }) => line === null && how === 'here')
    expect(player?.seconds).toBe(Math.min(...waiting.map(({ seconds }) => seconds)))
  })

  test('the keeper goes off: one who keeps comes on, or goes there from the field and is followed', () => {
    const keeper =
      stateAt(pack, taps([0, first]), 30).on.find(({ line }) => line === 'keeper')?.playerId ?? ''
    const other = [matchId(0), matchId(1)].find((id) => id !== keeper)
    const filled = fillPlace(stateAt(pack, taps([0, first], off(keeper, 30, 'out')), 31), policy)
    const inGoal = filled?.on.filter(({ line }) => line === 'keeper')
    expect(inGoal).toEqual([{ playerId: other, line: 'keeper' }])
    expect(filled?.on).toHaveLength(7)
  })

  test('nobody is left to come on: null', () => {
    const seven = packOf(planFor(requestOf(7)))
    const on = kickOff(foldMatch(seven, []))
    const state = stateAt(seven, taps([0, on], off(matchId(5), 30)), 31)
    expect(state.emptyPlaces).toBe(1)
    expect(fillPlace(state, policy)).toBeNull()
  })
})
