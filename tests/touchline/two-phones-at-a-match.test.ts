import { describe, expect, test } from 'vitest'
import type { MatchDeed } from '#touchline/match-deed'
import {
  firstOfTen as first,
  matchId,
  outOfGoal,
  packOfTen as pack,
  planOfTen as plan,
  stateAt,
  type Tap,
  taps,
} from '../support/tapped-match'

const onOf = (second: number, ...given: readonly Tap[]) =>
  new Set(stateAt(pack, taps(...given), second).on.map(({ playerId }) => playerId))
const why = (second: number, ...given: readonly Tap[]) =>
  stateAt(pack, taps(...given), second).setAside.map((one) => one.why)

describe('two phones at a match', () => {
  test('kick-off, whistle and full time: the first counts', () => {
    expect(why(10, [0, first], [2, first])).toEqual(['alreadyBegun'])
    const whistle: MatchDeed = { kind: 'periodEnd', period: 0 }
    expect(why(1600, [0, first], [1500, whistle], [1502, whistle])).toEqual(['alreadyEnded'])
    expect(stateAt(pack, taps([0, first], [1500, whistle], [1502, whistle]), 1600).second).toBe(1500)
    expect(why(10, [0, whistle])).toEqual(['notBegun'])
    const over: MatchDeed = { kind: 'fullTime' }
    expect(why(1700, [0, first], [1500, over], [1501, over])).toEqual(['alreadyStopped'])
  })

  test('full time, and then more was played: the match went on', () => {
    const again: MatchDeed = {
      kind: 'kickOff',
      period: 1,
      on: plan.players.slice(0, 7).map(({ playerId }) => ({ playerId, line: 'middle' })),
    }
    const state = stateAt(pack, taps([0, first], [1500, { kind: 'fullTime' }], [2000, again]), 2100)
    expect(state.status).toBe('running')
    expect(state.setAside.map((one) => one.why)).toEqual(['wentOn'])
  })

  test('a change tapped on both: at the time of the first; one called off as well stays made', () => {
    const call = stateAt(pack, taps([0, first]), 10).call
    const due = call?.due ?? 0
    const made: MatchDeed = { kind: 'changeMade', due, on: call?.after ?? [] }
    const both: Tap[] = [
      [0, first],
      [due + 20, made],
      [due + 25, made],
    ]
    expect(why(due + 30, ...both)).toEqual(['sameChange'])
    expect(
      stateAt(pack, taps(...both), due + 30).players.find(({ id }) => id === call?.off[0])?.seconds,
    ).toBe(due + 20)
    expect(why(due + 30, [0, first], [due + 20, made], [due + 25, { kind: 'changeDropped', due }])).toEqual([
      'sameChange',
    ])
    expect(why(due + 30, [0, first], [5, { kind: 'changeDropped', due: due + 1 }])).toEqual(['unknownChange'])
  })

  test('a change called off, then planned anew for the same second: it is made', () => {
    const call = stateAt(pack, taps([0, first]), 10).call
    const due = call?.due ?? 0
    const off: Tap[] = [
      [0, first],
      [due - 50, { kind: 'changeDropped', due }],
    ]
    expect(onOf(due + 1, ...off)).toEqual(onOf(1, [0, first]))
    const before = stateAt(pack, taps(...off), due - 40)
    const spells = [
      ...before.on.map((one) => ({ ...one, start: due - 40, end: due })),
      ...(call?.after ?? []).map((one) => ({ ...one, start: due, end: 1500 })),
    ]
    const anew: Tap[] = [...off, [due - 40, { kind: 'replan', from: due - 40, spells, sentence: '' }]]
    expect(onOf(due + 1, ...anew)).toEqual(new Set(call?.after.map(({ playerId }) => playerId)))
  })

  test('a clock that stands twice, and goes on once', () => {
    const stop: MatchDeed = { kind: 'clockStops' }
    const given: Tap[] = [
      [0, first],
      [100, stop],
      [110, stop],
      [160, { kind: 'clockGoesOn' }],
    ]
    expect(stateAt(pack, taps(...given), 200)).toMatchObject({ second: 140, isClockStopped: false })
    expect(stateAt(pack, taps(...given.slice(0, 3)), 150)).toMatchObject({
      second: 100,
      isClockStopped: true,
    })
    expect(why(200, ...given)).toEqual(['alreadyStopped'])
  })

  test('out for today: here does not take it back, nor an undo without a second answer', () => {
    const out: MatchDeed = { kind: 'register', playerId: matchId(3), state: 'out' }
    const given: Tap[] = [
      [0, first],
      [60, out],
      [90, { kind: 'register', playerId: matchId(3), state: 'here' }],
    ]
    expect(why(100, ...given)).toEqual(['isOut'])
    expect(onOf(100, ...given)).not.toContain(matchId(3))
    const [, event] = taps([0, first], [60, out])
    const undone = taps([0, first], [60, out], [70, { kind: 'undo', undoes: event?.id ?? '' }])
    expect(stateAt(pack, undone, 100).players.find(({ id }) => id === matchId(3))?.isOut).toBe(true)
  })

  test('off for two minutes: one place fewer, then able again, and the place is free', () => {
    const one = outOfGoal(stateAt(pack, taps([0, first]), 30))
    const given: Tap[] = [
      [0, first],
      [30, { kind: 'sentOff', playerId: one, seconds: 120 }],
    ]
    expect(stateAt(pack, taps(...given), 100)).toMatchObject({ emptyPlaces: 0, places: expect.anything() })
    expect(stateAt(pack, taps(...given), 100).on).toHaveLength(6)
    const back = stateAt(pack, taps(...given), 151)
    expect(back.emptyPlaces).toBe(1)
    expect(back.players.find(({ id }) => id === one)).toMatchObject({
      state: 'here',
      sentOff: null,
      line: null,
    })
  })

  test('tapped in a break, or of somebody unknown: nothing', () => {
    const whistle: MatchDeed = { kind: 'periodEnd', period: 0 }
    expect(why(1700, [0, first], [1500, whistle], [1600, { kind: 'places', on: [] }])).toEqual(['notRunning'])
    const stranger = '00000000-0000-4000-8000-00000000ffff'
    expect(why(100, [0, first], [50, { kind: 'register', playerId: stranger, state: 'here' }])).toEqual([
      'unknownPlayer',
    ])
  })
})
