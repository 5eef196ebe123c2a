import { describe, expect, it } from 'vitest'
import { ledgerJson } from '#exchange/ledger-json'
import { readSeasonLog } from '#exchange/season-log'
import { seasonLedger } from '#fairness/season-ledger'
import { randomSeason } from '../support/random-season'
import type { SeasonJson } from '../support/season-json'
import { type SecondLedger, secondLedger } from '../support/second-ledger'

const seasons = 2000

/** The program's ledger through its own JSON text, so that what is written is what is compared. */
function ledgerOf(season: SeasonJson): unknown {
  const log = readSeasonLog(JSON.parse(JSON.stringify(season)))
  if (!log.ok) throw new Error(JSON.stringify(log.reasons))
  return JSON.parse(JSON.stringify(ledgerJson(seasonLedger(log.value))))
}

const inOrder = (warnings: readonly { path: string; player: string }[]) =>
  warnings.map(({ path, player }) => `${path} ${player}`).sort()

/** Every difference, with its place: numbers to a millionth, everything else exactly. */
function differences(got: unknown, wanted: unknown, path: string): string[] {
  if (typeof wanted === 'number' && typeof got === 'number') {
    return Math.abs(got - wanted) <= 1e-6 ? [] : [`${path}: ${got} instead of ${wanted}`]
  }
  if (wanted instanceof Map) return differences(got, Object.fromEntries(wanted), path)
  if (typeof wanted !== 'object' || wanted === null || typeof got !== 'object' || got === null) {
    return got === wanted ? [] : [`${path}: ${got} instead of ${wanted}`]
  }
  const keys = new Set([...Object.keys(got), ...Object.keys(wanted)])
  const at = (value: object, key: string) => Object.getOwnPropertyDescriptor(value, key)?.value
  return [...keys].flatMap((key) => differences(at(got, key), at(wanted, key), `${path}.${key}`))
}

function compareLedgers(season: SeasonJson): string[] {
  const got = ledgerOf(season) as SecondLedger & { format: string }
  const wanted = secondLedger(season)
  return [
    ...differences(got.players, wanted.players, 'players'),
    ...differences(got.squad.ballRollingShare, wanted.squad.ballRollingShare, 'ballRollingShare'),
    ...differences(inOrder(got.squad.warnings), inOrder(wanted.squad.warnings), 'warnings'),
  ]
}

describe('the ledger against a second one made by other means', () => {
  it(`agrees on ${seasons} seasons by chance`, { timeout: 120_000 }, () => {
    for (let seed = 1; seed <= seasons; seed += 1) {
      expect({ seed, differences: compareLedgers(randomSeason(seed)) }).toEqual({ seed, differences: [] })
    }
  })

  it('agrees on larger seasons', { timeout: 60_000 }, () => {
    for (let seed = 1; seed <= 10; seed += 1) {
      const season = randomSeason(seed, { players: 16, practices: 20, turns: 24, matches: 6 })
      expect({ seed, differences: compareLedgers(season) }).toEqual({ seed, differences: [] })
    }
  })

  it('sees seasons in which every kind of thing happens', () => {
    const many = Array.from({ length: 300 }, (_, seed) => secondLedger(randomSeason(seed + 1)))
    const balances = many.flatMap((ledger) => ledger.players.flatMap((player) => Object.values(player.roles)))
    expect(new Set(balances.map((balance) => balance.status))).toEqual(new Set(['within', 'short', 'over']))
    expect(
      many.flatMap((ledger) => ledger.squad.warnings).some(({ path }) => path.startsWith('matches')),
    ).toBe(true)
    expect(
      many.flatMap((ledger) => ledger.squad.warnings).some(({ path }) => path.startsWith('practices')),
    ).toBe(true)
    const situations = many.flatMap((ledger) => ledger.players.map((player) => player.situations.outnumbered))
    expect(situations.some((balance) => (balance?.turns ?? 0) > 0)).toBe(true)
    expect(many.some((ledger) => ledger.squad.ballRollingShare === null)).toBe(true)
    expect(
      Math.max(...many.flatMap((ledger) => ledger.players.map((p) => p.longestRestTurns))),
    ).toBeGreaterThan(2)
  })
})
