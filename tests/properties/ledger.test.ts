import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { roles, situations } from '#exposure/column'
import { type Balance, type PlayerLedger, type SeasonLedger, seasonLedger } from '#fairness/season-ledger'
import type { SeasonLog } from '#fairness/season-log'
import { randomSeasonLog } from '../support/season-log-builder'
import { seededRandom } from '../support/seeded-random'

const seasonSeed = fc.integer({ min: 1, max: 2 ** 31 })
const runs = { numRuns: 150 }

const sum = (numbers: readonly number[]) => numbers.reduce((all, number) => all + number, 0)

/** Every balance of a player under a name of its own. */
function balancesOf(player: PlayerLedger): Map<string, Balance> {
  return new Map<string, Balance>([
    ...roles.flatMap((role): [string, Balance][] => [
      [`all ${role}`, player.roles[role]],
      [`practice ${role}`, player.practiceRoles[role]],
      [`match ${role}`, player.matchRoles[role]],
    ]),
    ...situations.map((situation): [string, Balance] => [situation, player.situations[situation]]),
    ...[...player.themes].map(([themeId, balance]): [string, Balance] => [`theme ${themeId}`, balance]),
  ])
}

/** The ledger as a plain value to compare, numbers to a millionth of a second. */
function comparable(ledger: SeasonLedger, nameOf: (playerId: string) => string = (id) => id) {
  const rounded = (balance: Balance) => ({
    ...balance,
    seconds: balance.seconds.toFixed(6),
    fairSeconds: balance.fairSeconds.toFixed(6),
    gapSeconds: Math.abs(balance.gapSeconds) < 5e-7 ? '0' : balance.gapSeconds.toFixed(6),
  })
  return {
    ballRollingShare: ledger.ballRollingShare,
    warnings: ledger.warnings.map((w) => JSON.stringify({ ...w, playerId: nameOf(w.playerId) })).sort(),
    players: ledger.players
      .map((player) => ({
        playerId: nameOf(player.playerId),
        liveSeconds: player.liveSeconds,
        longestRestTurns: player.longestRestTurns,
        balances: [...balancesOf(player)]
          .map(([name, balance]) => [name, rounded(balance)] as const)
          .sort(([a], [b]) => (a < b ? -1 : 1)),
      }))
      .sort((a, b) => (a.playerId < b.playerId ? -1 : 1)),
  }
}

/** Every player id and the order of everything that has none of its own, changed. */
function renamedAndReordered(
  log: SeasonLog,
  seed: number,
): { log: SeasonLog; oldName: (id: string) => string } {
  const random = seededRandom(seed)
  const ids = log.players.map((player) => player.id)
  const newIds = random.shuffle(ids.map((_, index) => `renamed ${index}`))
  const newName = new Map(ids.map((id, index) => [id, newIds[index] as string]))
  const oldName = new Map(ids.map((id, index) => [newIds[index] as string, id]))
  const to = (id: string) => newName.get(id) ?? id
  const renamed: SeasonLog = {
    ...log,
    players: random.shuffle(log.players.map((player) => ({ ...player, id: to(player.id) }))),
    practices: log.practices.map((practice) => ({
      ...practice,
      register: random.shuffle(practice.register.map((line) => ({ ...line, playerId: to(line.playerId) }))),
      turns: practice.turns.map((turn) => ({
        ...turn,
        stations: random.shuffle(
          turn.stations.map(({ attack, defend, keep }) => ({
            attack: random.shuffle(attack.map(to)),
            defend: random.shuffle(defend.map(to)),
            keep: random.shuffle(keep.map(to)),
          })),
        ),
      })),
    })),
    matches: log.matches.map((match) => ({
      ...match,
      register: random.shuffle(match.register.map((line) => ({ ...line, playerId: to(line.playerId) }))),
      spells: random.shuffle(match.spells.map((spell) => ({ ...spell, playerId: to(spell.playerId) }))),
    })),
  }
  return { log: renamed, oldName: (id) => oldName.get(id) ?? id }
}

/**
 * Turns of more than a second cut in two where chance falls. A turn that someone was there for only a part of is left
 * whole: who was there for one half of it would have been present for that half.
 */
function withTurnsSplit(log: SeasonLog, seed: number): { log: SeasonLog; cuts: number } {
  const random = seededRandom(seed)
  let cuts = 0
  const practices = log.practices.map((practice) => {
    const edges = practice.register.flatMap((line) => [line.from, line.to])
    const turns = practice.turns.flatMap((turn) => {
      const someoneCameOrWent = edges.some((edge) => turn.start < edge && edge < turn.end)
      if (someoneCameOrWent || turn.end - turn.start < 2) return [turn]
      const cut = random.whole(turn.start + 1, turn.end - 1)
      cuts += 1
      return [
        { ...turn, end: cut },
        { ...turn, start: cut },
      ]
    })
    return { ...practice, turns }
  })
  return { log: { ...log, practices }, cuts }
}

describe('the ledger of any season', () => {
  it('balances for every player: attack + defend + keep + rest = live time present', () => {
    fc.assert(
      fc.property(seasonSeed, (seed) => {
        for (const player of seasonLedger(randomSeasonLog(seed)).players) {
          expect(sum(roles.map((role) => player.roles[role].seconds))).toBeCloseTo(player.liveSeconds, 6)
          expect(sum(roles.map((role) => player.roles[role].fairSeconds))).toBeCloseTo(player.liveSeconds, 6)
        }
      }),
      runs,
    )
  })

  it('balances for every role: what the players got = seats × length', () => {
    fc.assert(
      fc.property(seasonSeed, (seed) => {
        const log = randomSeasonLog(seed)
        const ledger = seasonLedger(log)
        const got = (role: 'attack' | 'defend' | 'keep', of: 'practiceRoles' | 'matchRoles') =>
          sum(ledger.players.map((player) => player[of][role].seconds))
        for (const role of ['attack', 'defend', 'keep'] as const) {
          const seats = log.practices.flatMap((practice) =>
            practice.turns.flatMap((turn) =>
              turn.stations.map((station) => station[role].length * (turn.end - turn.start)),
            ),
          )
          expect(got(role, 'practiceRoles')).toBeCloseTo(sum(seats), 6)
        }
        const spells = log.matches.flatMap((match) => match.spells)
        const onPitch = sum(spells.map((spell) => spell.end - spell.start))
        expect(
          got('attack', 'matchRoles') + got('defend', 'matchRoles') + got('keep', 'matchRoles'),
        ).toBeCloseTo(onPitch, 6)
      }),
      runs,
    )
  })

  it('has gaps that sum to zero in every column', () => {
    fc.assert(
      fc.property(seasonSeed, (seed) => {
        const { players } = seasonLedger(randomSeasonLog(seed))
        const gaps = new Map<string, number>()
        for (const player of players) {
          for (const [name, { gapSeconds }] of balancesOf(player))
            gaps.set(name, (gaps.get(name) ?? 0) + gapSeconds)
        }
        for (const [name, gap] of gaps)
          expect({ name, gap: Math.abs(gap) < 1e-6 }).toEqual({ name, gap: true })
      }),
      runs,
    )
  })

  it('does not change when players are renamed or anything is reordered', () => {
    fc.assert(
      fc.property(seasonSeed, fc.integer(), (seed, shuffle) => {
        const log = randomSeasonLog(seed)
        const changed = renamedAndReordered(log, shuffle)
        expect(comparable(seasonLedger(changed.log), changed.oldName)).toEqual(comparable(seasonLedger(log)))
      }),
      runs,
    )
  })

  it('has the same numbers for every player after an empty practice is added', () => {
    fc.assert(
      fc.property(seasonSeed, fc.nat(), (seed, place) => {
        const log = randomSeasonLog(seed)
        const register = log.players.map((player) => ({ playerId: player.id, from: 0, to: 3600 }))
        const empty = {
          id: 'empty',
          day: '2026-10-01',
          title: null,
          lengthSeconds: 3600,
          register,
          turns: [],
        }
        const practices = log.practices.toSpliced(place % (log.practices.length + 1), 0, empty)
        expect(seasonLedger({ ...log, practices }).players).toEqual(seasonLedger(log).players)
      }),
      runs,
    )
  })

  it('has the same seconds after turns are split in two', () => {
    let allCuts = 0
    fc.assert(
      fc.property(seasonSeed, fc.integer(), (seed, cut) => {
        const log = randomSeasonLog(seed)
        const split = withTurnsSplit(log, cut)
        allCuts += split.cuts
        const before = comparable(seasonLedger(log))
        const after = comparable(seasonLedger(split.log))
        const secondsOnly = (ledger: typeof before) =>
          ledger.players.map(({ playerId, liveSeconds, balances }) => ({
            playerId,
            liveSeconds,
            balances: balances.map(([name, { turns: _turns, ...seconds }]) => [name, seconds]),
          }))
        expect(secondsOnly(after)).toEqual(secondsOnly(before))
        expect(after.ballRollingShare).toBe(before.ballRollingShare)
      }),
      runs,
    )
    expect(allCuts).toBeGreaterThan(runs.numRuns)
  })
})
