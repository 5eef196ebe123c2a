import { afterAll } from 'vitest'
import type { Author } from '#data/author'
import { type Club, recordClub } from '#data/clubs'
import { closeAppDatabase, closeDatabase, type Database, openDatabase } from '#data/database'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { recordMemberships } from '#data/memberships'
import { recordPeople } from '#data/people'
import { type RosterPlayer, recordPlayers } from '#data/players'
import { recordSeason } from '#data/seasons'
import { type NewSession, recordSessions } from '#data/sessions'
import { recordSquads } from '#data/squads'
import { recordThemes, type StoredTheme } from '#data/themes'
import { noFocus } from '#themes/theme-focus'
import { testDatabase } from './test-database'

let owner: Database | null = null

/** The test file's database by the role that owns the tables: only for what the app itself may not do. */
export function ownerDatabase(): Database {
  owner ??= openDatabase(testDatabase().ownerUrl, { connections: 3 })
  return owner
}

afterAll(async () => {
  await closeAppDatabase()
  if (owner) await closeDatabase(owner)
  owner = null
})

export const noon = new Date('2026-09-01T12:00:00.000Z')

export type TestClub = {
  readonly club: Club
  readonly coach: Author & { readonly personId: string }
  readonly headCoachId: string
  readonly guardianId: string
  readonly seasonId: string
  /** Autumn, 1 August to 31 December 2026, and spring, 1 January to 30 June 2027. */
  readonly termIds: readonly [string, string]
  readonly squadId: string
  /** Members from 1 August 2026 on; the last of them is asked not to keep. */
  readonly playerIds: readonly string[]
  /** A tree of two: the second stands under the first. */
  readonly themeIds: readonly [string, string]
  /** As the app, inside the club. */
  readonly run: <Answer>(work: (tx: ClubTx) => Promise<Answer>) => Promise<Answer>
}

export function aRosterPlayer(player: Partial<RosterPlayer> = {}): RosterPlayer {
  return { id: newId(), name: 'Ola Brandt', keeps: true, wantsToKeep: false, code: null, ...player }
}

export function aTheme(theme: Partial<StoredTheme> = {}): StoredTheme {
  return {
    id: newId(),
    name: 'Two against one',
    parentId: null,
    order: 1,
    asks: '',
    focus: noFocus,
    code: null,
    ...theme,
  }
}

export function aSession(session: Partial<NewSession> & Pick<NewSession, 'squadId'>): NewSession {
  return {
    id: newId(),
    kind: 'practice',
    day: '2026-09-08',
    title: '',
    startsAt: null,
    lengthSeconds: null,
    periods: session.kind === 'match' ? [{ start: 0, end: 1200 }] : null,
    designId: null,
    ledById: null,
    code: null,
    ...session,
  }
}

const names = [
  'Ada Fenn',
  'Bo Larch',
  'Cy Marrow',
  'Di Quill',
  'Eli Rook',
  'Fay Sedge',
  'Gus Thorn',
  'Hal Umber',
]

/** A club of its own with a coach, a head coach, a guardian, a season of two terms, a squad of players and two themes. */
export async function aClub({ players = 5, isDemo = false, name = 'Reedwater' } = {}): Promise<TestClub> {
  const club: Club = {
    id: newId(),
    name,
    timeZone: 'Europe/London',
    locale: 'en-GB',
    isDemo,
    calendarDay: null,
    countsGoals: false,
  }
  const [coachId, headCoachId, guardianId, seasonId, squadId] = [newId(), newId(), newId(), newId(), newId()]
  const termIds = [newId(), newId()] as const
  const themes = [aTheme({ name: 'Attacking' }), aTheme({ name: 'Two against one' })] as const
  const roster = Array.from({ length: players }, (_, index) =>
    aRosterPlayer({ name: names[index] ?? `Player ${index}`, keeps: index < players - 1 }),
  )
  await inClub(club.id, (tx) => recordClub(tx, club), { database: ownerDatabase() })
  const run: TestClub['run'] = (work) => inClub(club.id, work)
  await run(async (tx) => {
    await recordPeople(tx, [
      { id: coachId, name: 'Kit Vale', role: 'coach' },
      { id: headCoachId, name: 'Lou Wynd', role: 'headCoach' },
      { id: guardianId, name: 'Mo Fenn', role: 'guardian' },
    ])
    await recordSeason(tx, {
      id: seasonId,
      name: '2026/27',
      firstDay: '2026-08-01',
      lastDay: '2027-06-30',
      terms: [
        { id: termIds[0], name: 'Autumn', firstDay: '2026-08-01', lastDay: '2026-12-31' },
        { id: termIds[1], name: 'Spring', firstDay: '2027-01-01', lastDay: '2027-06-30' },
      ],
    })
    await recordSquads(tx, [{ id: squadId, name: 'Otters', ageLimit: 10 }])
    await recordPlayers(tx, roster)
    await recordMemberships(tx, {
      squadId,
      memberships: roster.map(({ id }) => ({ playerId: id, firstDay: '2026-08-01', lastDay: null })),
    })
    await recordThemes(tx, [themes[0], { ...themes[1], parentId: themes[0].id }])
  })
  return {
    club,
    coach: { personId: coachId, at: noon },
    headCoachId,
    guardianId,
    seasonId,
    termIds,
    squadId,
    playerIds: roster.map(({ id }) => id),
    themeIds: [themes[0].id, themes[1].id],
    run,
  }
}

/** Enters one session of the club's squad and gives its id. */
export async function enterSession(at: TestClub, session: Partial<NewSession> = {}): Promise<string> {
  const entered = aSession({ squadId: at.squadId, ...session })
  await at.run((tx) => recordSessions(tx, [entered]))
  return entered.id
}
