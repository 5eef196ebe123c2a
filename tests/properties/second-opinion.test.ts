import { describe, expect, it } from 'vitest'
import { readSeasonLog } from '#exchange/season-log'
import { seasonLedger } from '#fairness/season-ledger'
import { plantedFaults, plantedText } from '../support/planted-faults'
import { randomSeason } from '../support/random-season'
import { mustRefuse } from '../support/second-opinion'
import { seededRandom } from '../support/seeded-random'
import { smallSeason } from '../support/small-season'
import { spoil } from '../support/spoil-season'

const trials = 2500

describe('what is refused', () => {
  it('is the same by a second opinion on the faults that are known', () => {
    expect(mustRefuse(smallSeason())).toBe(false)
    for (const fault of plantedFaults) {
      expect([fault.refusal, mustRefuse(JSON.parse(plantedText(fault)))]).toEqual([fault.refusal, true])
    }
  })

  it(`is the same by a second opinion on ${trials} seasons spoilt by chance`, { timeout: 60_000 }, () => {
    let refused = 0
    for (let seed = 1; seed <= trials; seed += 1) {
      const random = seededRandom(seed)
      const season = randomSeason(seed, { players: 6, practices: 2, turns: 4, matches: 1 })
      const text = JSON.stringify(spoil(season, random))
      const log = readSeasonLog(JSON.parse(text))
      expect({ seed, text, refused: !log.ok }).toEqual({ seed, text, refused: mustRefuse(JSON.parse(text)) })
      // Whatever is accepted has books that balance.
      if (log.ok) seasonLedger(log.value)
      else refused += 1
    }
    expect(refused).toBeGreaterThan(trials / 5)
    expect(refused).toBeLessThan((trials * 4) / 5)
  })
})
