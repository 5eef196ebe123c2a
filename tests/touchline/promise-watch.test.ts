import { describe, expect, test } from 'vitest'
import type { MatchDeed } from '#touchline/match-deed'
import { promiseFix, promiseWatch, type WatchedPromise } from '#touchline/promise-watch'
import type { ReplanDeed } from '#touchline/replan-match'
import { sayPromise } from '#touchline/say-promise'
import {
  cameBefore,
  firstOfTen as first,
  halfPromised,
  kickOff,
  matchId,
  outOfGoal,
  packOfTen as pack,
  sevens,
  stateAt,
  type Tap,
  taps,
} from '../support/tapped-match'

const of = (watch: readonly WatchedPromise[], id: string) => watch.find(({ playerId }) => playerId === id)

describe('promiseWatch', () => {
  test('as planned: everybody has, or will have, half', () => {
    const watch = promiseWatch(stateAt(pack, taps([0, first]), 60), halfPromised)
    expect(watch.map(({ least }) => least)).toEqual(Array.from({ length: 10 }, () => 1500))
    expect(new Set(watch.map(({ how }) => how))).toEqual(new Set(['planned']))
    expect(watch.reduce((sum, { willHave }) => sum + willHave, 0)).toBe(7 * 3000)
  })

  test('nothing is planned: who waits must be on by the second at which what is left is what it lacks', () => {
    const bare = { ...pack, plan: null, format: sevens }
    const given: Tap[] = [...cameBefore(10), [0, first]]
    const off =
      pack.players.find(
        ({ id }) => !stateAt(bare, taps(...given), 1).on.some(({ playerId }) => playerId === id),
      )?.id ?? ''
    const state = stateAt(bare, taps(...given), 600)
    const watched = of(promiseWatch(state, halfPromised), off)
    // 1500 s of 3000 are promised, so it must be on from 1500 s at the latest: the second kick-off.
    expect(watched).toMatchObject({ how: 'inDanger', latest: 1500, latestClock: { period: 1, second: 0 } })
    expect(watched && sayPromise(watched, { name: 'Bo', format: sevens })).toBe(
      'Bo must come on by the start of period 2 to have the 25 minutes that were promised.',
    )
    const heard = (deed: ReplanDeed) => stateAt(bare, taps(...given, [600, deed]), 600)
    const fix = promiseFix(state, halfPromised, { playerId: off, heard })
    expect(fix?.at).toBeLessThanOrEqual(1500)
    const second: Tap = [2000, { kind: 'kickOff', period: 1, on: state.on }]
    const late: Tap[] = [...given, [1500, { kind: 'periodEnd', period: 0 }], second]
    const lost = of(promiseWatch(stateAt(bare, taps(...late), 2060), halfPromised), off)
    expect(lost && sayPromise(lost, { name: 'Bo', format: sevens })).toBe(
      'Bo cannot have the 25 minutes that were promised any more. Bo had 0:00.',
    )
  })

  test('who comes at half-time is promised half of what was left, and the card says so', () => {
    const late = matchId(9)
    const gone: Tap = [-60, { kind: 'register', playerId: late, state: 'gone' }]
    const given: Tap[] = [
      gone,
      [0, kickOff(stateAt(pack, taps(gone), -30))],
      [1500, { kind: 'periodEnd', period: 0 }],
      [1600, { kind: 'register', playerId: late, state: 'here' }],
    ]
    const watched = of(promiseWatch(stateAt(pack, taps(...given), 1700), halfPromised), late)
    expect(watched).toMatchObject({ least: 750, there: 1500, whole: 3000, whyLess: 'cameLate' })
    expect(watched && sayPromise({ ...watched, how: 'planned' }, { name: 'Bo', format: sevens })).toBe(
      'Bo came late: there for 25:00 of 50 minutes.',
    )
  })

  test('off hurt for good: promised of the time it could play', () => {
    const hurt = outOfGoal(stateAt(pack, taps([0, first]), 200))
    const given: Tap[] = [
      [0, first],
      [200, { kind: 'register', playerId: hurt, state: 'notPlaying' }],
    ]
    const watched = of(promiseWatch(stateAt(pack, taps(...given), 300), halfPromised), hurt)
    expect(watched).toMatchObject({ least: 100, had: 200, how: 'kept', whyLess: 'notPlaying' })
  })

  test('the next mark is too late: the change that keeps it comes as soon as can be', () => {
    const bare = { ...pack, plan: null, format: sevens }
    const begun: Tap[] = [...cameBefore(10), [0, first]]
    const off = pack.players
      .map(({ id }) => id)
      .filter((id) => !stateAt(bare, taps(...begun), 1).on.some(({ playerId }) => playerId === id))
    const [swapped = '', waits = ''] = off
    const second: MatchDeed = { kind: 'kickOff', period: 1, on: stateAt(bare, taps(...begun), 1).on }
    // One who waited was on for the last 800 s of the first half; the marks after 2220 s are at 2400 and 2700 s.
    const on = (id: string, state: ReturnType<typeof stateAt>) =>
      state.on.map((one, index) => (index === 6 ? { ...one, playerId: id } : one))
    const half = stateAt(bare, taps(...begun), 1)
    const given: Tap[] = [
      ...begun,
      [700, { kind: 'places', on: on(waits, half) }],
      [1500, { kind: 'periodEnd', period: 0 }],
      [2000, second],
    ]
    const now = 2000 + 720
    const state = stateAt(bare, taps(...given), now)
    const watched = of(promiseWatch(state, halfPromised), waits)
    // It had 800 of 1500 s, so it must be on for the last 700 s of 3000.
    expect(watched).toMatchObject({ how: 'inDanger', had: 800, latest: 2300 })
    expect(of(promiseWatch(state, halfPromised), swapped)?.how).toBe('lost')
    const heard = (deed: ReplanDeed) => stateAt(bare, taps(...given, [now, deed]), now)
    const fix = promiseFix(state, halfPromised, { playerId: waits, heard })
    expect(fix?.at).toBeLessThanOrEqual(2300)
    expect(fix?.clock.period).toBe(1)
  })
})
