import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { keyOfColumn } from '#exposure/column-tally'
import type { AccountLine, SessionAccount } from '#fairness/account'
import { accountMatch } from '#fairness/account-match'
import { accountPractice } from '#fairness/account-practice'
import type { AccountRules } from '#fairness/account-spans'
import { seasonLedger } from '#fairness/season-ledger'
import type { SeasonLog } from '#fairness/season-log'
import { randomSeasonLog } from '../support/season-log-builder'

const seasonSeed = fc.integer({ min: 1, max: 2 ** 31 })
const runs = { numRuns: 150 }

function rulesOf(log: SeasonLog, members: readonly string[]): AccountRules {
  return {
    able: new Set(log.players.filter((player) => player.keeps).map((player) => player.id)),
    members: new Set(members),
    middleAttackShare: log.policy.middleAttackShare,
    written: 'tapped',
  }
}

const sumOf = (lines: readonly AccountLine[], of: (line: AccountLine) => number) =>
  lines.reduce((sum, line) => sum + of(line), 0)

const columnsOf = (account: SessionAccount, playerId: string, of: (line: AccountLine) => number) =>
  new Map(
    account.lines
      .filter((line) => line.playerId === playerId && of(line) !== 0)
      .map((line) => [keyOfColumn(line), of(line).toFixed(6)] as const)
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  )

function accountsOf(log: SeasonLog, rules: AccountRules): SessionAccount[] {
  return [
    ...log.practices.map((practice) => accountPractice(practice, rules)),
    ...log.matches.map((match) => accountMatch(match, rules)),
  ]
}

describe('the accounts of any season', () => {
  it('add up to its ledger', () => {
    fc.assert(
      fc.property(seasonSeed, (seed) => {
        const log = randomSeasonLog(seed)
        const ledger = seasonLedger(log)
        const accounts = accountsOf(log, rulesOf(log, []))
        for (const player of ledger.players) {
          const own = accounts.flatMap(({ lines }) =>
            lines.filter((line) => line.playerId === player.playerId),
          )
          for (const [role, balance] of Object.entries(player.roles)) {
            const lines = own.filter((line) => line.role === role)
            expect(sumOf(lines, (line) => line.seconds)).toBeCloseTo(balance.seconds, 6)
            expect(sumOf(lines, (line) => line.fairSeconds)).toBeCloseTo(balance.fairSeconds, 6)
            expect(sumOf(lines, (line) => line.turns)).toBe(balance.turns)
          }
        }
      }),
      runs,
    )
  })

  it('have as many fair turns as turns in every column, and none for matches', () => {
    fc.assert(
      fc.property(seasonSeed, (seed) => {
        const log = randomSeasonLog(seed)
        for (const account of accountsOf(log, rulesOf(log, []))) {
          const columns = new Set(account.lines.map(keyOfColumn))
          for (const column of columns) {
            const lines = account.lines.filter((line) => keyOfColumn(line) === column)
            expect(sumOf(lines, (line) => line.fairTurns)).toBeCloseTo(
              sumOf(lines, (line) => line.turns),
              9,
            )
          }
          if (account.kind === 'match')
            expect(account.lines.every((line) => line.turns === 0 && line.fairTurns === 0)).toBe(true)
        }
      }),
      runs,
    )
  })

  it('have full fair shares that a member would have had, had it been there and waited', () => {
    fc.assert(
      fc.property(seasonSeed, fc.nat(), (seed, pick) => {
        const log = randomSeasonLog(seed)
        const player = log.players[pick % Math.max(1, log.players.length)]
        if (!player) return
        const rules = rulesOf(log, [player.id])
        const absentFrom = <Session extends SeasonLog['practices'][number] | SeasonLog['matches'][number]>(
          session: Session,
        ) => ({
          ...session,
          register: session.register.filter((line) => line.playerId !== player.id),
        })
        const there = { playerId: player.id, from: 0, to: 100_000 }
        for (const practice of log.practices.map(absentFrom)) {
          // Without its own seats: a turn it had one in is no turn it could have waited in.
          const turns = practice.turns.filter(
            (turn) => !JSON.stringify(turn.stations).includes(JSON.stringify(player.id)),
          )
          const missed = accountPractice({ ...practice, turns }, rules)
          const waited = accountPractice(
            { ...practice, turns, register: [...practice.register, there] },
            rules,
          )
          expect(columnsOf(missed, player.id, (l) => l.fullFairSeconds)).toEqual(
            columnsOf(waited, player.id, (l) => l.fairSeconds),
          )
          expect(columnsOf(waited, player.id, (l) => l.fullFairSeconds)).toEqual(
            columnsOf(waited, player.id, (l) => l.fairSeconds),
          )
          expect(
            sumOf(
              missed.lines.filter((l) => l.playerId === player.id),
              (l) => l.fairSeconds + l.seconds,
            ),
          ).toBe(0)
        }
        for (const match of log.matches.map(absentFrom)) {
          const spells = match.spells.filter((spell) => spell.playerId !== player.id)
          const missed = accountMatch({ ...match, spells }, rules)
          const waited = accountMatch({ ...match, spells, register: [...match.register, there] }, rules)
          expect(columnsOf(missed, player.id, (l) => l.fullFairSeconds)).toEqual(
            columnsOf(waited, player.id, (l) => l.fairSeconds),
          )
        }
      }),
      runs,
    )
  })

  it('have full fair shares that fill all live time of a member, and none for a guest', () => {
    fc.assert(
      fc.property(seasonSeed, (seed) => {
        const log = randomSeasonLog(seed)
        const [guest, ...members] = log.players.map((player) => player.id)
        for (const account of accountsOf(log, rulesOf(log, members))) {
          for (const member of members) {
            const own = account.lines.filter((line) => line.playerId === member)
            expect(sumOf(own, (line) => line.fullFairSeconds)).toBeCloseTo(account.liveSeconds, 6)
          }
          const ofGuest = account.lines.filter((line) => line.playerId === guest)
          expect(ofGuest.every((line) => line.fullFairSeconds === 0)).toBe(true)
        }
      }),
      runs,
    )
  })

  it('have open-goal fair shares that are the same for all who were there all along', () => {
    fc.assert(
      fc.property(seasonSeed, (seed) => {
        const log = randomSeasonLog(seed)
        for (const account of accountsOf(log, rulesOf(log, []))) {
          const always = account.presences.filter(
            (p) => p.liveSeconds === account.liveSeconds && p.liveSeconds > 0,
          )
          const dues = always.map(({ playerId }) =>
            columnsOf(account, playerId, (line) => line.openGoalFairSeconds),
          )
          for (const due of dues) expect(due).toEqual(dues[0])
        }
      }),
      runs,
    )
  })
})
