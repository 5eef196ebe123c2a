import { describe, expect, test } from 'vitest'
import { inOrder } from '#pitch/event-order'
import { eventsThatStand } from '#pitch/standing-events'
import { bookSecondAt, bookStartOf, playingSecondAt } from '#touchline/match-clock'
import type { MatchDeed } from '#touchline/match-deed'
import { matchTimes } from '#touchline/match-times'
import { kickOffMs, type Tap, taps } from '../support/tapped-match'

const format = { periodSeconds: [600, 600] }
const kickOff = (period: number): MatchDeed => ({ kind: 'kickOff', period, on: [] })
const whistle = (period: number): MatchDeed => ({ kind: 'periodEnd', period })
const stop: MatchDeed = { kind: 'clockStops' }
const timesOf = (...given: readonly Tap[]) =>
  matchTimes(eventsThatStand(inOrder(taps(...given))).standing, format)
const lengths = (...given: readonly Tap[]) =>
  timesOf(...given).periods.map(({ length, isEndAssumed }) => [length, isEndAssumed])

describe('matchTimes', () => {
  test('whistles early and late: as long as it was', () => {
    expect(lengths([0, kickOff(0)], [570, whistle(0)], [900, kickOff(1)], [1630, whistle(1)])).toEqual([
      [570, false],
      [730, false],
    ])
  })

  test('no whistle before the next kick-off: as long as planned, or until then, or until the last tap in it', () => {
    expect(lengths([0, kickOff(0)], [900, kickOff(1)])[0]).toEqual([600, true])
    expect(lengths([0, kickOff(0)], [550, kickOff(1)])[0]).toEqual([550, true])
    expect(lengths([0, kickOff(0)], [640, { kind: 'goal', side: 'ours' }], [900, kickOff(1)])[0]).toEqual([
      640,
      true,
    ])
  })

  test('a whistle tapped an hour later is none', () => {
    expect(lengths([0, kickOff(0)], [4200, whistle(0)])).toEqual([[600, true]])
    expect(lengths([0, kickOff(0)], [1490, whistle(0)])).toEqual([[1490, false]])
  })

  test('the clock stood when the whistle was forgotten: it ended then', () => {
    expect(lengths([0, kickOff(0)], [620, stop], [900, kickOff(1)])[0]).toEqual([620, true])
    expect(lengths([0, kickOff(0)], [620, stop], [630, whistle(0)])[0]).toEqual([620, false])
  })

  test('a match that ends in its first period; an extra period', () => {
    expect(timesOf([0, kickOff(0)], [300, { kind: 'fullTime' }]).endedAt).toBe(kickOffMs + 300_000)
    const extra = timesOf(
      [0, kickOff(0)],
      [600, whistle(0)],
      [700, kickOff(1)],
      [1300, whistle(1)],
      [1400, kickOff(2)],
    )
    expect(extra.periods.map(({ isExtra }) => isExtra)).toEqual([false, false, true])
  })

  test('seconds of play leave breaks and stops out; the book leaves out stops only', () => {
    const times = timesOf(
      [0, kickOff(0)],
      [100, stop],
      [160, { kind: 'clockGoesOn' }],
      [660, whistle(0)],
      [960, kickOff(1)],
    )
    const at = (second: number) => {
      const moment = kickOffMs + second * 1000
      return [playingSecondAt(times, moment), bookSecondAt(times, moment)]
    }
    expect([50, 130, 160, 660, 800, 960, 1000].map(at)).toEqual([
      [50, 50],
      [100, 100],
      [100, 100],
      [600, 600],
      [600, 740],
      [600, 900],
      [640, 940],
    ])
    expect(times.periods.map((period) => bookStartOf(times, period))).toEqual([0, 900])
  })
})
