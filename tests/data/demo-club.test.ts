import { execFile } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { daysLater } from '#common/days-later'
import { listAccounts } from '#data/accounts'
import { getClub } from '#data/clubs'
import { appDatabase, closeAppDatabase, closeDatabase, openDatabase } from '#data/database'
import { listFlagStates } from '#data/flag-states'
import { inClub } from '#data/in-club'
import { listDemoPeople } from '#data/people'
import { listReviews } from '#data/reviews'
import { loadSquadWritten } from '#data/written-sessions'
import type { SessionAccount } from '#fairness/account'
import { autumnId, demoSquads } from '../../seeds/club'
import { buildDemoClub } from '../../seeds/demo-club'
import { loadDemoClub } from '../../seeds/load-demo-club'
import { playerId } from '../../seeds/names'
import { foldDemoSeason, heldSessions } from '../support/demo-season'
import { testDatabase } from '../support/test-database'

const demo = buildDemoClub()
const owner = openDatabase(testDatabase().ownerUrl, { connections: 1 })
const season = { from: demo.season.firstDay, to: demo.season.lastDay }
const said: string[] = []

beforeAll(async () => {
  expect(await loadDemoClub(owner, (line) => said.push(line))).toBe(true)
}, 60_000)

afterAll(async () => {
  await closeAppDatabase()
  await closeDatabase(owner)
})

/** Tables of the club with their rows, counted as the app's role. */
async function countRows(tables: readonly string[]): Promise<Record<string, number>> {
  return inClub(demo.club.id, async ({ db }) => {
    const counted: Record<string, number> = {}
    for (const table of tables) {
      const rows = await db.$queryRawUnsafe<{ count: bigint }[]>(`select count(*) from "${table}"`)
      counted[table] = Number(rows[0]?.count)
    }
    return counted
  })
}

/** In one order, whatever order rows came in. */
function inOrder(accounts: readonly SessionAccount[]) {
  return accounts
    .map((account) => ({
      ...account,
      lines: account.lines.toSorted((a, b) => compare(columnOf(a), columnOf(b))),
      presences: account.presences.toSorted((a, b) => compare(a.playerId, b.playerId)),
    }))
    .toSorted((a, b) => compare(a.sessionId, b.sessionId))
}

const compare = (one: string, other: string) => (one < other ? -1 : one > other ? 1 : 0)
const columnOf = (line: SessionAccount['lines'][number]) =>
  [line.playerId, line.role, line.situation, line.line, line.themeId].join()

describe('loading the demo club', () => {
  it('says how far it is', () => {
    expect(said).toEqual([
      'Quillhaven Otters: 2 squads, 31 players',
      `${demo.sessions.length} sessions`,
      'Under-10s: accounts and flags',
      'Under-12s: accounts and flags',
      'pages for families confirmed',
      'two practices planned',
      'a match planned',
    ])
  })

  it('enters every row there is, as the app sees it', async () => {
    const written = demo.sessions.filter((session) => session.writtenAt !== null)
    const events = demo.sessions.flatMap((session) => session.events)
    const seats = events.flatMap((event) =>
      event.kind === 'turn' ? event.turn.stations.flatMap((s) => [...s.attack, ...s.defend, ...s.keep]) : [],
    )
    const counted = await countRows(
      [
        'Person',
        'Term',
        'Squad',
        'SquadCoach',
        'Player',
        'Guardianship',
        'SquadMembership',
        'Adjustment',
        'Theme',
      ]
        .concat(['ProgrammeEntry', 'PracticeDesign', 'Session', 'RegisterLine', 'TurnEvent', 'TurnSeat'])
        .concat(['MatchSpell', 'PolicyVersion', 'TermReview', 'AuditEntry', 'SessionTotal'])
        .concat(['ProgrammeBlock', 'ThemeDesign', 'ClosedDays', 'GroundSize', 'PlayerAway']),
    )
    expect(counted).toEqual({
      Person: 10,
      Term: 2,
      Squad: 2,
      SquadCoach: 5,
      Player: 31,
      Guardianship: 5,
      SquadMembership: 30,
      Adjustment: 1,
      Theme: 8,
      ProgrammeEntry: 22,
      PracticeDesign: 15,
      ProgrammeBlock: 1,
      ThemeDesign: demo.themeDesigns.length,
      ClosedDays: demo.closedDays.length,
      GroundSize: 2,
      PlayerAway: 2,
      Session: demo.sessions.length,
      RegisterLine: written.flatMap((session) => session.register).length,
      TurnEvent: events.length,
      TurnSeat: seats.length,
      MatchSpell: demo.sessions.flatMap((session) => session.spells).length,
      PolicyVersion: 2,
      TermReview: 2,
      // The loading itself, and each page for a family that its coach confirmed.
      AuditEntry: 1 + ((await countRows(['FamilyPage'])).FamilyPage ?? 0),
      SessionTotal: Object.values(demoSquads).flatMap((squad) => heldSessions(demo, squad)).length,
    })
  })

  it.each(Object.values(demoSquads))('keeps of the $name what the core makes of it', async (squad) => {
    const expected = foldDemoSeason(demo, squad)
    // The practice of the day itself has not been held yet.
    const at = { squadId: squad.id, from: season.from, to: daysLater(demo.club.calendarDay, -1) }
    const kept = await inClub(demo.club.id, (tx) => listAccounts(tx, at))
    expect(inOrder(kept)).toEqual(inOrder(expected.accounts))
    const flags = await inClub(demo.club.id, (tx) =>
      listFlagStates(tx, { squadIds: [squad.id], seasonId: demo.season.id }),
    )
    const name = (flag: { playerId: string; rule: string; scope: string; subject: string; since: string }) =>
      [flag.playerId, flag.rule, flag.scope, flag.subject, flag.since].join()
    expect(flags.map(name).toSorted()).toEqual(expected.flags.map(name).toSorted())
  })

  it('keeps every turn, spell and register line as it was dealt', async () => {
    const squad = demoSquads.underTen
    const stored = await inClub(demo.club.id, (tx) => loadSquadWritten(tx, { squadId: squad.id, ...season }))
    for (const one of stored) {
      const dealt = demo.sessions.find((session) => session.id === one.session.id)
      expect(one.register).toHaveLength(dealt?.register.length ?? -1)
      if (one.kind === 'match') expect(one.match.spells).toHaveLength(dealt?.spells.length ?? -1)
      else
        expect(one.events.map(({ kind, id }) => [kind, id])).toEqual(
          dealt?.events.map(({ kind, id }) => [kind, id]),
        )
    }
    expect(stored.length).toBeGreaterThan(heldSessions(demo, squad).length)
  })

  it('has two flags answered, and the autumn review opened and answered', async () => {
    const squadIds = Object.values(demoSquads).map(({ id }) => id)
    const answered = await inClub(demo.club.id, (tx) =>
      listFlagStates(tx, { squadIds, seasonId: demo.season.id, statuses: ['acknowledged'] }),
    )
    expect(answered.map(({ playerId: id, rule }) => [id, rule]).toSorted()).toEqual(
      [
        [playerId('goran'), 'goalShareOver'],
        [playerId('amara'), 'goalShareOver'],
      ].toSorted(),
    )
    const reviews = await inClub(demo.club.id, (tx) => listReviews(tx, autumnId))
    expect(reviews.map(({ answer }) => answer.length > 0)).toEqual([true, true])
  })

  it('offers its people to sign in as, and stands still on its day', async () => {
    const people = await listDemoPeople(appDatabase())
    expect(people.map(({ role }) => role)).toEqual(expect.arrayContaining(['headCoach', 'coach', 'guardian']))
    const club = await inClub(demo.club.id, getClub)
    expect([club.isDemo, club.calendarDay]).toEqual([true, demo.club.calendarDay])
  })

  it('refuses a second time, changes nothing, and the script then ends well and says so', async () => {
    const before = await countRows(['Session', 'TurnEvent', 'FlagState', 'AuditEntry'])
    expect(await loadDemoClub(owner, () => {})).toBe(false)
    const script = fileURLToPath(new URL('../../seeds/load-demo.ts', import.meta.url))
    const tsx = fileURLToPath(new URL('../../node_modules/tsx/dist/cli.mjs', import.meta.url))
    const { stdout } = await promisify(execFile)(process.execPath, [tsx, '--conditions=react-server', script])
    expect(stdout).toContain('there already')
    expect(await countRows(['Session', 'TurnEvent', 'FlagState', 'AuditEntry'])).toEqual(before)
  })
})
