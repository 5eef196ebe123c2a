import { describe, expect, it } from 'vitest'
import { mostEvenParts } from '#lineup/most-even-parts'
import { evenLevels, type LevelsAsked } from '#solver/even-levels'
import { seededRandom } from '../support/seeded-random'

/** Every way to give each a level so that all come to the total: its sum of squares, and what its levels cost beyond. */
function everyWay(asked: readonly LevelsAsked[], total: number, beyond: readonly (readonly number[])[]) {
  const ways: { readonly squares: number; readonly beyond: number }[] = []
  const go = (index: number, left: number, squares: number, sum: number) => {
    const own = asked[index]
    if (!own) {
      if (left === 0) ways.push({ squares, beyond: sum })
      return
    }
    for (const [level, seconds] of own.levels.entries())
      go(index + 1, left - seconds, squares + (own.due - seconds) ** 2, sum + (beyond[index]?.[level] ?? 0))
  }
  go(0, total, 0, 0)
  return ways
}

describe('what a way to share out costs beyond the best price', () => {
  // Outside: every way there is, counted out; and, where levels lie evenly, handing out unit by unit.
  it('measures every way exactly, and its bound is reached where levels lie evenly', () => {
    const random = seededRandom(5)
    let found = 0
    for (let round = 0; round < 40; round += 1) {
      const isEven = round % 2 === 0
      const asked = Array.from({ length: 4 }, () => ({
        due: random.whole(0, 9000) / 10,
        levels: isEven ? [0, 300, 600, 900] : [0, 240, 300, 540, 840],
        count: 1,
      }))
      const total = isEven ? 300 * random.whole(2, 10) : 240 * random.whole(1, 3) + 300 * random.whole(1, 4)
      const { bound, beyond } = evenLevels(asked, total)
      const ways = everyWay(asked, total, beyond)
      for (const way of ways) {
        found += 1
        expect(way.squares).toBeCloseTo(bound + way.beyond, 4)
        expect(way.beyond).toBeGreaterThanOrEqual(-1e-9)
      }
      const parts = asked.map(({ due }) => ({ due, least: 0, most: 900 }))
      if (isEven) expect(bound).toBeCloseTo(mostEvenParts(parts, { total, unit: 300 })?.unevenness ?? -1, 4)
    }
    expect(found).toBeGreaterThan(500)
  })
})
