import { describe, expect, it } from 'vitest'
import { evenPeriods, evenSeconds, mostPlayersFor } from '#match/format/least-possible'

const quarters = (aSide: number) => ({ aSide, periodSeconds: [600, 600, 600, 600] })
const sevens = { aSide: 7, periodSeconds: [1500, 1500] }

/** By dealing the places out one by one, to whoever has fewest: what arithmetic must come to. */
function dealt(places: number, players: number): readonly number[] {
  const got = Array.from({ length: players }, () => 0)
  for (let place = 0; place < places; place += 1) {
    const least = got.indexOf(Math.min(...got))
    got[least] = (got[least] ?? 0) + 1
  }
  return got
}

describe('how many can have a promise', () => {
  // Derived: s players with half of the match each need s·T/2 of the n·T there are.
  it('half of the match: as long as at most twice as many come as play', () => {
    for (let aSide = 3; aSide <= 11; aSide += 1)
      expect(mostPlayersFor({ share: 0.5, periods: null }, { ...quarters(aSide), policyShare: null })).toBe(
        2 * aSide,
      )
  })

  // "3/4 where mathematically possible" of a region's rule: 3s ≤ 4n, so 9, 12 and 14.
  it.each([
    [7, 9],
    [9, 12],
    [11, 14],
  ])('three of four periods, %i a side: %i at most', (aSide, most) => {
    expect(mostPlayersFor({ share: null, periods: 3 }, { ...quarters(aSide), policyShare: null })).toBe(most)
    expect(mostPlayersFor({ share: 0.75, periods: null }, { ...quarters(aSide), policyShare: null })).toBe(
      most,
    )
  })

  it('agrees with dealing period by period', () => {
    for (let aSide = 3; aSide <= 11; aSide += 1)
      for (let periods = 1; periods <= 4; periods += 1) {
        const most = mostPlayersFor({ share: null, periods }, { ...quarters(aSide), policyShare: null })
        const keeps = (players: number) => Math.min(...dealt(aSide * 4, players)) >= periods
        expect(keeps(most ?? 0)).toBe(true)
        expect(keeps((most ?? 0) + 1)).toBe(false)
      }
  })

  it('takes the club’s own share where the format has none, and the harder of two promises', () => {
    expect(mostPlayersFor({ share: null, periods: null }, { ...sevens, policyShare: 0.5 })).toBe(14)
    expect(mostPlayersFor({ share: 0.6, periods: null }, { ...sevens, policyShare: 0.5 })).toBe(11)
    expect(mostPlayersFor({ share: 0.5, periods: 2 }, { ...sevens, policyShare: null })).toBe(7)
    expect(mostPlayersFor({ share: 1 / 3, periods: null }, { ...sevens, policyShare: null })).toBe(21)
  })

  it('promises nothing, and then any number can come', () => {
    expect(mostPlayersFor({ share: null, periods: null }, { ...sevens, policyShare: null })).toBeNull()
    expect(mostPlayersFor({ share: 0, periods: null }, { ...sevens, policyShare: 0.5 })).toBeNull()
  })
})

describe('the even share of a match', () => {
  // Worked by hand: 7 places × 50 minutes = 350 player minutes; 350 / 9 = 38.89 minutes, 77.8 %; 9 × 50 − 350 = 100 off.
  it('nine at seven a side, two halves of 25 minutes', () => {
    const even = evenSeconds(sevens, 9)
    expect(even / 60).toBeCloseTo(38.89, 2)
    expect(even / 3000).toBeCloseTo(0.778, 3)
    expect(9 * 3000 - 9 * even).toBeCloseTo(100 * 60, 6)
  })

  // Worked by hand: 28 places in quarters for ten: eight play three, two play two, nobody four.
  it('ten at seven a side, four quarters', () => {
    expect(evenPeriods(quarters(7), 10)).toEqual({ periods: 3, playersWithThem: 8 })
  })

  it('is what dealing one by one gives', () => {
    for (let aSide = 3; aSide <= 11; aSide += 1)
      for (let players = aSide; players <= 20; players += 1) {
        const got = dealt(aSide * 4, players)
        const periods = Math.max(...got)
        const playersWithThem = got.filter((count) => count === periods).length
        expect(evenPeriods(quarters(aSide), players)).toEqual({ periods, playersWithThem })
      }
  })

  it('gives nobody more than the match, and nobody something to nobody', () => {
    expect(evenSeconds(sevens, 6)).toBe(3000)
    expect(evenSeconds(sevens, 0)).toBe(0)
    expect(evenPeriods(sevens, 5)).toEqual({ periods: 2, playersWithThem: 5 })
  })
})
