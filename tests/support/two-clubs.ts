import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import pg from 'pg'
import { recordClub } from '#data/clubs'
import { closeDatabase, type Database, openDatabase } from '#data/database'
import { recordDesigns } from '#data/designs'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { recordMatchFormats } from '#data/match-formats'
import { recordMemberships } from '#data/memberships'
import { recordPeople } from '#data/people'
import { recordPlayers } from '#data/players'
import { recordSeason } from '#data/seasons'
import { recordSessions } from '#data/sessions'
import { recordSquadCoach } from '#data/squad-coaches'
import { recordSquads } from '#data/squads'
import { recordThemes } from '#data/themes'
import { plainFormat } from '#lineup/draft/plain-format'
import { calendarDay, clubId, demoSeason, demoSquads, personId } from '../../seeds/club'
import { demoId } from '../../seeds/ids'
import { type PlayerKey, playerId } from '../../seeds/names'
import { planMatch } from '../../seeds/planned-matches'
import { databaseUrl } from '../../src/boot/postgres.mjs'
import { ownerRole } from '../../src/boot/postgres-cluster.mjs'
import { aSheet } from './design-builder'
import { aRosterPlayer, aSession, aTheme } from './test-club'

/** The ids that a page's address, or a form, can name; all of one squad. */
export type Things = {
  readonly squadId: string
  readonly playerId: string
  readonly otherPlayerId: string
  /** Written down. */
  readonly sessionId: string
  /** Planned, and to come. */
  readonly comingId: string
  /** A match that has its line-up. */
  readonly matchId: string
  readonly designId: string
  readonly formatId: string
  readonly themeId: string
  readonly termId: string
  readonly coachId: string
  readonly guardianId: string
  readonly requestId: string
  readonly flagId: string
}

/** The address by which the tables of a started book are reached as their owner. */
export function ownerUrlOf(data: string): string {
  const { ownerPassword: password } = JSON.parse(readFileSync(join(data, 'secrets.json'), 'utf8'))
  const port = Number(readFileSync(join(data, 'postgres.port'), 'utf8'))
  return databaseUrl({ port, role: ownerRole, password, database: 'turnbook' })
}

/** A head coach, an administrator, a coach and a guardian of another club. */
export const foreignNames = {
  headCoach: 'Gale Thornby',
  administrator: 'Rue Ashcombe',
  coach: 'Wilf Marrable',
  guardian: 'Ness Pardoe',
} as const

/** Puts a second demo club beside the first, and says what there is of the first one's squads and of the second. */
export async function addSecondClub(ownerUrl: string) {
  const database = openDatabase(ownerUrl, { connections: 2 })
  const client = new pg.Client({ connectionString: ownerUrl })
  await client.connect()
  try {
    await planMatchOfOlder(database)
    return {
      underTen: await thingsOfDemo(client, { squad: 'underTen', child: 'adaeze', guardian: 'chinwe' }),
      underTwelve: await thingsOfDemo(client, { squad: 'underTwelve', child: 'hugo', guardian: 'tamsin' }),
      foreign: await recordForeignClub(database),
    }
  } finally {
    await client.end()
    await closeDatabase(database)
  }
}

/** The demo has the line-up of the younger squad alone. */
async function planMatchOfOlder(database: Database): Promise<void> {
  const sessionId = demoId('underTwelve/match/2026-05-02')
  const now = new Date(`${calendarDay}T08:00:00Z`)
  const demo = { club: { id: clubId, name: '', timeZone: 'Europe/London', calendarDay } }
  await inClub(clubId, (tx) => planMatch(tx, demo, { sessionId, called: 13, now }), { database })
}

async function thingsOfDemo(
  client: pg.Client,
  of: {
    readonly squad: 'underTen' | 'underTwelve'
    readonly child: PlayerKey
    readonly guardian: 'chinwe' | 'tamsin'
  },
): Promise<Things> {
  const squad = demoSquads[of.squad].id
  await client.query(`select set_config('app.club_id', $1, false)`, [clubId])
  const idBy = async (text: string, values: readonly string[] = []): Promise<string> => {
    const { rows } = await client.query<{ id: string }>(text, [...values])
    return rows[0]?.id ?? newId()
  }
  const otherChild = of.squad === 'underTen' ? 'bao' : 'dev'
  return {
    squadId: squad,
    playerId: playerId(of.child),
    otherPlayerId: playerId(otherChild),
    sessionId: await idBy(
      `select id from "Session" where "squadId" = $1 and kind = 'practice' and written <> 'notWritten' order by day limit 1`,
      [squad],
    ),
    comingId: await idBy(
      `select s.id from "Session" s join "SessionPlan" p on p."sessionId" = s.id
       where s."squadId" = $1 and s.kind = 'practice' and s.day >= $2 and s.written = 'notWritten' order by s.day limit 1`,
      [squad, calendarDay],
    ),
    matchId: await idBy(
      'select s.id from "Session" s join "SessionPlan" p on p."sessionId" = s.id where s."squadId" = $1 and s.kind = \'match\' limit 1',
      [squad],
    ),
    designId: await idBy('select id from "PracticeDesign" order by id limit 1'),
    formatId: await idBy('select "matchFormatId" as id from "Squad" where id = $1', [squad]),
    themeId: await idBy('select id from "Theme" order by id limit 1'),
    termId: demoSeason.terms[0]?.id ?? '',
    coachId: personId(of.squad === 'underTen' ? 'idris' : 'samir'),
    guardianId: personId(of.guardian),
    requestId: await idBy('select id from "ChildRequest" limit 1'),
    flagId: await idBy('select id from "FlagState" where "squadId" = $1 limit 1', [squad]),
  }
}

async function recordForeignClub(database: Database): Promise<Things> {
  const club = {
    ...{ id: newId(), name: 'Thistledown Rovers', timeZone: 'Europe/London', locale: 'en-GB' },
    ...{ isDemo: true, calendarDay },
  }
  const ids = { squadId: newId(), coachId: newId(), guardianId: newId() }
  const [child, another] = [aRosterPlayer({ name: 'Zeb Foxtarn' }), aRosterPlayer({ name: 'Yan Foxtarn' })]
  const [written, coming] = [
    aSession({ squadId: ids.squadId, day: '2026-06-01' }),
    aSession({ squadId: ids.squadId, day: calendarDay }),
  ]
  const [design, theme] = [aSheet({ id: newId(), name: 'Foreign lanes' }), aTheme({ name: 'Foreign theme' })]
  const format = { id: newId(), format: { ...plainFormat, name: 'Foreign sevens' }, takenFrom: null }
  const terms = demoSeason.terms.map((term) => ({ ...term, id: newId() }))
  await inClub(
    club.id,
    async (tx) => {
      await recordClub(tx, club)
      await recordPeople(tx, [
        { id: newId(), name: foreignNames.headCoach, role: 'headCoach' },
        { id: newId(), name: foreignNames.administrator, role: 'administrator' },
        { id: ids.coachId, name: foreignNames.coach, role: 'coach' },
        { id: ids.guardianId, name: foreignNames.guardian, role: 'guardian' },
      ])
      await recordSeason(tx, { ...demoSeason, id: newId(), terms })
      await recordSquads(tx, [{ id: ids.squadId, name: 'Foreign squad', ageLimit: 10 }])
      const line = { kind: 'coach', firstDay: demoSeason.firstDay, lastDay: null } as const
      await recordSquadCoach(tx, { squadId: ids.squadId, personId: ids.coachId, ...line })
      await recordPlayers(tx, [child, another])
      await recordMemberships(tx, {
        squadId: ids.squadId,
        memberships: [child, another].map(({ id }) => ({
          playerId: id,
          firstDay: demoSeason.firstDay,
          lastDay: null,
        })),
      })
      await recordThemes(tx, [theme])
      await recordDesigns(tx, [design])
      await recordMatchFormats(tx, [format])
      await recordSessions(tx, [written, coming])
    },
    { database },
  )
  return {
    ...ids,
    ...{ playerId: child.id, otherPlayerId: another.id, sessionId: written.id, comingId: coming.id },
    matchId: newId(),
    ...{ designId: design.id, formatId: format.id, themeId: theme.id, termId: terms[0]?.id ?? '' },
    ...{ requestId: newId(), flagId: newId() },
  }
}
