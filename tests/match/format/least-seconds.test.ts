import { describe, expect, it } from 'vitest'
import { leastSecondsOf } from '#match/format/least-seconds'
import type { LeastTime } from '#match/format/match-format'

const nothing: LeastTime = { share: null, periods: null, late: [], wherePossible: false }
const quarters = { periodSeconds: [720, 720, 720, 720], from: 0, to: 2880, policyShare: null }

describe('least time of a match', () => {
  // "Every player … at least 50 % of every game": a national rule for recreational play, from its questions and answers.
  it('half of the match for whoever is there throughout', () => {
    expect(leastSecondsOf({ ...nothing, share: 0.5 }, quarters)).toBe(1440)
  })

  it('a share that computers cannot write down exactly promises no second more', () => {
    const halves = { ...quarters, periodSeconds: [1200, 1200], to: 2400 }
    expect(leastSecondsOf({ ...nothing, share: 0.55 }, halves)).toBe(1320)
  })

  // The same body's rule of late arrivals, in quarters: in the first, two of the three that are left; in the second or
  // third, one.
  const late: LeastTime = {
    ...nothing,
    share: 0.5,
    late: [
      { arrivesIn: 1, periods: 2 },
      { arrivesIn: 2, periods: 1 },
      { arrivesIn: 3, periods: 1 },
    ],
  }
  it.each([
    ['at the kick-off', 0, 1440],
    ['in the first quarter', 300, 1440],
    ['a second after the kick-off', 1, 1440],
    ['as the second begins', 720, 720],
    ['in the second', 1000, 720],
    ['in the third', 2100, 720],
    ['late in the third', 2159, 720],
  ])('comes %s', (_when, from, least) => {
    expect(leastSecondsOf(late, { ...quarters, from })).toBe(least)
  })

  it('in the last quarter, of which the rule says nothing: half of what is left', () => {
    expect(leastSecondsOf(late, { ...quarters, from: 2400 })).toBe(240)
  })

  it('three of four periods, only for whoever is there throughout', () => {
    expect(leastSecondsOf({ ...nothing, periods: 3 }, quarters)).toBe(2160)
    expect(leastSecondsOf({ ...nothing, periods: 3 }, { ...quarters, to: 2000 })).toBe(0)
    expect(leastSecondsOf({ ...nothing, share: 0.5, periods: 3 }, { ...quarters, to: 2000 })).toBe(1000)
  })

  it('the club’s share where the format has none, and of two promises the larger', () => {
    expect(leastSecondsOf(nothing, { ...quarters, policyShare: 0.5 })).toBe(1440)
    expect(leastSecondsOf({ ...nothing, share: 0.25 }, { ...quarters, policyShare: 0.5 })).toBe(720)
    expect(leastSecondsOf({ ...nothing, share: 0.9, periods: 2 }, quarters)).toBe(2592)
    expect(leastSecondsOf({ ...nothing, share: 0.25, periods: 2 }, quarters)).toBe(1440)
  })

  it('never more than the time for which somebody is there', () => {
    expect(leastSecondsOf(late, { ...quarters, from: 300, to: 900 })).toBe(600)
    expect(leastSecondsOf({ ...nothing, share: 1 }, { ...quarters, from: 900, to: 900 })).toBe(0)
    expect(leastSecondsOf({ ...nothing, share: 1 }, { ...quarters, from: 900, to: 300 })).toBe(0)
  })
})
