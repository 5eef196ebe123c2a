import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { sumAccounts } from '#data/account-sums'
import { listAudit } from '#data/audit'
import { listSquadPlayers } from '#data/players'
import { listSessions } from '#data/sessions'
import { readSeasonLog } from '#exchange/season-log'
import { roles } from '#exposure/column'
import { type PlayerLedger, seasonLedger } from '#fairness/season-ledger'
import { exportFile } from '#server/export-file'
import { loadImportBook } from '#server/import-book'
import { importFile } from '#server/import-file'
import { planLog } from '#server/import-log'
import { saveSeasonLog } from '#server/import-season-log'
import { anImport, emptySquad, headCoachOf } from '../support/import-input'
import { randomSeason } from '../support/random-season'
import { runTurnbook } from '../support/run-turnbook'
import type { SeasonJson } from '../support/season-json'
import { smallSeason } from '../support/small-season'
import { aClub, type TestClub } from '../support/test-club'

const now = new Date('2027-06-30T12:00:00.000Z')
const allDays = { from: '0001-01-01', to: '9999-12-31' }

const take = (at: TestClub, squadId: string, season: unknown) =>
  importFile(headCoachOf(at), anImport(JSON.stringify(season), { squadId, what: 'log' }), { now })

const exported = async (at: TestClub, squadId: string) =>
  JSON.parse((await at.run((tx) => exportFile(tx, 'log', { squadId, ...allDays }))).text)

function ledgerOf(season: unknown) {
  const log = readSeasonLog(season)
  if (!log.ok) throw new Error(JSON.stringify(log.reasons))
  return seasonLedger(log.value)
}

/** A ledger by the players' ids, so that their order does not matter; those who were never anywhere left out. */
function figures(season: unknown) {
  const rounded = (player: PlayerLedger) =>
    JSON.parse(
      JSON.stringify({ ...player, themes: Object.fromEntries([...player.themes].sort()) }, (_key, value) =>
        typeof value === 'number' ? Math.round(value * 1e6) / 1e6 : value,
      ),
    )
  const { players, ballRollingShare, warnings } = ledgerOf(season)
  return {
    ballRollingShare,
    warnings: warnings.length,
    players: players.map(rounded).sort((a, b) => (a.playerId < b.playerId ? -1 : 1)),
  }
}

/** Days inside the club's season; the policy is the club's, so the log's is left to the defaults. */
function inSeason({ policy: _, ...season }: SeasonJson): SeasonJson {
  const move = <One extends { date: string }>(one: One) => ({ ...one, date: `2026-09${one.date.slice(7)}` })
  return { ...season, practices: season.practices?.map(move), matches: season.matches?.map(move) }
}

const seeds = Array.from({ length: 60 }, (_, seed) => seed)
  .map((seed) => inSeason(randomSeason(seed)))
  .filter(({ players }) => players.every(({ id }) => id !== '' && id.trim() === id))
  .slice(0, 25)

describe('a season log in and out again', () => {
  it('gives the same ledger, whatever the season', async () => {
    const at = await aClub()
    expect(seeds.length).toBeGreaterThan(20)
    for (const season of seeds) {
      const squadId = await emptySquad(at)
      expect(await take(at, squadId, season)).toMatchObject({ ok: true })
      expect(figures(await exported(at, squadId))).toEqual(figures(season))
    }
  }, 120_000)

  it('gives the pages the seconds and fair shares of the ledger', async () => {
    const at = await aClub()
    const season = inSeason(randomSeason(11, { players: 14, practices: 12, turns: 20, matches: 4 }))
    const squadId = await emptySquad(at)
    await take(at, squadId, season)
    const sums = await at.run((tx) => sumAccounts(tx, { squadIds: [squadId], ...allDays }))
    const players = await at.run((tx) => listSquadPlayers(tx, squadId))
    for (const player of ledgerOf(await exported(at, squadId)).players) {
      const id = players.find(({ code }) => code === player.playerId)?.id
      for (const role of roles) {
        const own = sums.filter((sum) => sum.playerId === id && sum.role === role)
        const total = (of: 'seconds' | 'fairSeconds') => own.reduce((sum, one) => sum + one[of], 0)
        expect(total('seconds')).toBeCloseTo(player.roles[role].seconds, 6)
        expect(total('fairSeconds')).toBeCloseTo(player.roles[role].fairSeconds, 6)
      }
    }
  })

  it('marks what it enters as typed in later, and leaves an audit row', async () => {
    const at = await aClub()
    const squadId = await emptySquad(at)
    await take(at, squadId, smallSeason())
    const sessions = await at.run((tx) => listSessions(tx, { squadId, ...allDays }))
    expect(sessions.map(({ written, code, title }) => [written, code, title])).toEqual([
      ['typedLater', 's1', 'Tuesday'],
      ['typedLater', 's2', ''],
      ['typedLater', 'm1', ''],
    ])
    // The club has a theme of the name of t1 already.
    const [entry] = await at.run((tx) => listAudit(tx, { limit: 1 }))
    expect(entry).toMatchObject({
      action: 'importSeasonLog',
      detail: { newPlayers: 4, newThemes: 2, practices: 2, matches: 1 },
    })
  })
})

describe('a season log is refused as a whole', () => {
  const empty = async (at: TestClub, squadId: string) =>
    [
      await at.run((tx) => listSquadPlayers(tx, squadId)),
      await at.run((tx) => listSessions(tx, { squadId, ...allDays })),
    ].map((list) => list.length)

  it('with every session that is there already', async () => {
    const at = await aClub()
    const squadId = await emptySquad(at)
    await take(at, squadId, smallSeason())
    const again = await take(at, squadId, smallSeason())
    expect(again.ok ? [] : again.reasons.map(({ path }) => path)).toEqual([
      'practices[0].id',
      'practices[1].id',
      'matches[0].id',
    ])
    expect(await empty(at, squadId)).toEqual([4, 3])
  })

  it.each<[string, (season: ReturnType<typeof smallSeason>) => void, RegExp]>([
    [
      'a day in no season',
      (s) => {
        ;(s.practices[0] as { date: string }).date = '2025-01-01'
      },
      /practices\[0\].date.*no season/,
    ],
    [
      'a turn with a stranger',
      (s) => {
        s.practices[0]?.turns[0]?.stations[0]?.attack?.push('nobody')
      },
      /nobody/,
    ],
    [
      'a second that is too large',
      (s) => {
        s.practices[1]?.register.push({ player: 'p1', from: 0, to: 3e9 })
      },
      /2147483647/,
    ],
    [
      'a name with a zero in it',
      (s) => {
        ;(s.players[0] as { name: string }).name = 'A\0'
      },
      /zero/,
    ],
    [
      'an empty id',
      (s) => {
        s.players.push({ id: '' })
      },
      /players\[4\]/,
    ],
    [
      'a circle of themes',
      (s) => {
        ;(s.themes?.[0] as { parent: string }).parent = 't2'
      },
      /themes\[0\].parent/,
    ],
  ])('for %s', async (_what, spoil, sentence) => {
    const at = await aClub()
    const squadId = await emptySquad(at)
    const season = smallSeason()
    spoil(season)
    const refused = await take(at, squadId, season)
    expect(
      refused.ok ? '' : refused.reasons.map(({ path, message }) => `${path} ${message}`).join('\n'),
    ).toMatch(sentence)
    expect(await empty(at, squadId)).toEqual([0, 0])
  })

  it('and for players who cannot be told apart, or whom the book has otherwise', async () => {
    const at = await aClub()
    const squadId = await emptySquad(at)
    const roster = 'Name,No,Keeps\nSam Reed,1,\nSam Reed,2,\nBo Birch,3,no'
    await importFile(headCoachOf(at), anImport(roster, { squadId, what: 'roster' }), { now })
    const players = [
      { id: 'x1', name: 'Sam Reed' },
      { id: 'x2', name: 'Bo Birch' },
    ]
    const refused = await take(at, squadId, { format: 'turnbook/season-log@1', players })
    expect(refused.ok ? [] : refused.reasons.map(({ path }) => path)).toEqual([
      'players[0]',
      'players[1].keeps',
    ])
  })

  it('when the database refuses the last of it: nothing of it stays', async () => {
    const at = await aClub()
    const squadId = await emptySquad(at)
    const saving = at.run(async (tx) => {
      const by = { personId: at.headCoachId, at: now }
      const book = await loadImportBook(tx, { squadId, viewer: null, now })
      const planned = await planLog(tx, smallSeason(), book)
      if (!planned.ok) throw new Error('planned')
      const { log, plan } = planned.value
      // Past every check: two spells of one player at once, which only the database can still refuse.
      const matches = log.matches.map((match) => ({ ...match, spells: [...match.spells, ...match.spells] }))
      return saveSeasonLog(tx, { log: { ...log, matches }, plan, book, by })
    })
    await expect(saving).rejects.toMatchObject({ code: 'conflict' })
    expect(await empty(at, squadId)).toEqual([0, 0])
  })
})

describe('the command', () => {
  it('imports a season into a squad by name, says how far it is, and exports the same ledger again', async () => {
    const at = await aClub()
    const squadId = await emptySquad(at)
    const where = ['--club', at.club.id, '--squad', squadId]
    const season = inSeason(randomSeason(3))
    const done = await runTurnbook(['import', ...where], JSON.stringify(season))
    expect([done.exitCode, done.output]).toEqual([0, ''])
    expect(done.errors).toMatch(/turns and spells/)
    const folder = await mkdtemp(join(tmpdir(), 'turnbook-'))
    const file = join(folder, 'log.json')
    expect((await runTurnbook(['export', ...where, '--what', 'log', '--out', file])).exitCode).toBe(0)
    expect(figures(JSON.parse(await readFile(file, 'utf8')))).toEqual(figures(season))
    await writeFile(file, 'not json')
    expect((await runTurnbook(['import', ...where, '--in', file])).exitCode).toBe(2)
    await rm(folder, { recursive: true })
  })

  it.each([
    [['import', '--squad', 'Nobody'], /--club|--squad/],
    [['import'], /--squad: is missing/],
    [['export', '--squad', 'x', '--what', 'everything'], /--what.*none/],
    [['export', '--squad', 'x', '--what', 'log', '--from', '1.9.2026'], /--from.*no day/],
  ])('refuses %j with what would be right', async (words, sentence) => {
    const { exitCode, errors, output } = await runTurnbook(words, JSON.stringify(smallSeason()))
    expect([exitCode, output]).toEqual([2, ''])
    expect(errors).toMatch(sentence)
  })

  it('takes a season of a hundred sessions whole', async () => {
    const at = await aClub()
    const squadId = await emptySquad(at)
    const season = inSeason(randomSeason(5, { players: 16, practices: 100, turns: 24, matches: 20 }))
    expect(await take(at, squadId, season)).toMatchObject({ ok: true })
  }, 60_000)
})
