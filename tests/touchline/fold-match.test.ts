import { describe, expect, test } from 'vitest'
import { foldMatch } from '#touchline/fold-match'
import type { MatchDeed } from '#touchline/match-deed'
import { secondsOfPlayer } from '../support/match-spells'
import {
  firstOfTen as first,
  kickOff,
  kickOffMs,
  matchId,
  outOfGoal,
  packOfTen as pack,
  planOfTen as plan,
  stateAt,
  taps,
} from '../support/tapped-match'

const half: MatchDeed = { kind: 'periodEnd', period: 0 }

describe('foldMatch', () => {
  test('nothing tapped: who is to be on by the plan', () => {
    const before = foldMatch(pack, [])
    expect(before.status).toBe('notBegun')
    expect(before.nextKickOff?.on).toHaveLength(7)
    expect(before.nextKickOff?.missing).toEqual([])
  })
  test('as planned: seven on at every second, nothing to tap but kick-offs and whistles', () => {
    const begun = taps([0, first], [1500, half])
    const second = kickOff(stateAt(pack, begun, 1600))
    const events = taps(
      [0, first],
      [1500, half],
      [2100, second],
      [3600, { kind: 'periodEnd', period: 1 }],
      [3601, { kind: 'fullTime' }],
    )
    for (let at = 0; at < 3600; at += 37) {
      const state = stateAt(
        pack,
        events.filter((one) => one.at <= kickOffMs + at * 1000),
        at,
      )
      expect(state.on).toHaveLength(at < 1500 || at >= 2100 ? 7 : 0)
    }
    const end = foldMatch(pack, events)
    expect(end.status).toBe('ended')
    for (const { id, seconds } of end.players) expect(seconds).toBe(secondsOfPlayer(plan.spells, id))
  })
  test('a change is called before it is due, and counts as made', () => {
    const events = taps([0, first])
    const at10 = stateAt(pack, events, 10)
    const call = at10.call
    expect(call?.on.length).toBeGreaterThan(0)
    expect(call?.off.length).toBe(call?.on.length)
    const due = call?.due ?? 0
    const later = stateAt(pack, events, due + 5)
    expect(later.call?.isDue).toBe(true)
    expect(later.on.map(({ playerId }) => playerId)).toEqual(
      expect.arrayContaining(call?.on.map(({ playerId }) => playerId) ?? []),
    )
    expect(later.players.find(({ id }) => id === call?.off[0])?.seconds).toBe(due)
    const late = stateAt(
      pack,
      taps([0, first], [due + 40, { kind: 'changeMade', due, on: call?.after ?? [] }]),
      due + 50,
    )
    expect(late.players.find(({ id }) => id === call?.off[0])?.seconds).toBe(due + 40)
    const dropped = stateAt(pack, taps([0, first], [due + 4, { kind: 'changeDropped', due }]), due + 10)
    expect(dropped.on).toEqual(expect.arrayContaining([...first.on]))
  })
  test('off hurt: the place is empty until somebody fills it', () => {
    const hurt = outOfGoal(stateAt(pack, taps([0, first]), 432))
    const events = taps([0, first], [432, { kind: 'register', playerId: hurt, state: 'notPlaying' }])
    const state = stateAt(pack, events, 440)
    const { on, emptyPlaces, players } = state
    expect(on.map(({ playerId }) => playerId)).not.toContain(hurt)
    expect(emptyPlaces).toBe(1)
    expect(players.find(({ id }) => id === hurt)).toMatchObject({
      line: null,
      placedSince: 432,
      state: 'notPlaying',
    })
  })
  test('a change whose player is not there is not made by itself, and is said', () => {
    const call = stateAt(pack, taps([0, first]), 10).call
    const missing = call?.on[0]?.playerId ?? matchId(9)
    const due = call?.due ?? 0
    const events = taps([0, first], [5, { kind: 'register', playerId: missing, state: 'gone' }])
    expect(stateAt(pack, events, 20).call?.missing).toEqual([missing])
    expect(stateAt(pack, events, due + 1).on).toHaveLength(7)
  })
})
