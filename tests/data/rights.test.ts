import { describe, expect, it } from 'vitest'
import { askAs, failureOf } from '../support/ask-as'
import { ownerDatabase } from '../support/test-club'
import { testDatabase } from '../support/test-database'

const changeable = ['SELECT', 'INSERT', 'UPDATE', 'DELETE'] as const

/** What the app may do with each table: see, add, alter (+ for some columns only), remove. */
const rights: Readonly<Record<string, string>> = {
  Club: 'see alter+',
  Person: 'see add alter+',
  Season: 'see add alter+',
  Term: 'see add alter+',
  Squad: 'see add alter+',
  SquadCoach: 'see add alter+',
  Player: 'see add alter+',
  KeepsChange: 'see add',
  Guardianship: 'see add alter+ remove',
  SquadMembership: 'see add alter+',
  Adjustment: 'see add alter+',
  Theme: 'see add alter+',
  ProgrammeEntry: 'see add alter+ remove',
  ProgrammeBlock: 'see add remove',
  ThemeDesign: 'see add remove',
  ClosedDays: 'see add remove',
  GroundSize: 'see add alter+ remove',
  PlayerAway: 'see add alter+ remove',
  TermPlan: 'see add alter+',
  CalendarFeed: 'see add alter+ remove',
  PracticeDesign: 'see add alter+',
  Session: 'see add alter+',
  RegisterLine: 'see add alter+',
  TurnEvent: 'see add',
  TurnSeat: 'see add',
  MatchSpell: 'see add alter+',
  SessionTotal: 'see add remove',
  Exposure: 'see add remove',
  SessionPresence: 'see add remove',
  PolicyVersion: 'see add',
  FlagState: 'see add alter+',
  PlayerPair: 'see add alter+',
  SessionPlan: 'see add alter+',
  MatchFormat: 'see add alter+',
  LineWish: 'see add alter+ remove',
  PitchEvent: 'see add',
  HelperPass: 'see add alter+',
  TermReview: 'see add alter+',
  AuditEntry: 'see add',
  OneTimeLink: 'see add alter+',
  FamilyPage: 'see add',
  FamilyNote: 'see add alter+ remove',
  ChildRequest: 'see add alter+',
  Consent: 'see add alter+',
  Erasure: 'see',
  Login: 'see add alter+ remove',
  LoginSession: 'see add alter+ remove',
  LoginMethod: 'see add alter+ remove',
  LoginProof: 'see add alter+ remove',
  Passkey: 'see add alter+ remove',
  RateLimit: 'see add alter remove',
  _prisma_migrations: '',
}

describe('the app’s rights', () => {
  it('are these and no others', async () => {
    const found = await askAs(testDatabase().ownerUrl, async (client) => {
      const { rows } = await client.query(
        `select c.relname as name, ${changeable
          .map((right) => `has_table_privilege('turnbook_app', c.oid, '${right}') as "${right}"`)
          .join(', ')},
           has_any_column_privilege('turnbook_app', c.oid, 'UPDATE') as some,
           has_table_privilege('turnbook_app', c.oid, 'TRUNCATE, REFERENCES, TRIGGER') as more
         from pg_class c where c.relnamespace = 'public'::regnamespace and c.relkind in ('r', 'p')`,
      )
      return Object.fromEntries(rows.map((row) => [row.name, wordsOf(row)]))
    })
    expect(found).toEqual(rights)
  })

  function wordsOf(row: Record<string, boolean>): string {
    const words = [
      row.SELECT && 'see',
      row.INSERT && 'add',
      row.UPDATE ? 'alter' : row.some && 'alter+',
      row.DELETE && 'remove',
      row.more && 'more',
    ]
    return words.filter(Boolean).join(' ')
  }

  it.each([
    ['move a row to another club', 'update "Player" set "clubId" = gen_random_uuid()'],
    ['move a session to another squad', 'update "Session" set "squadId" = gen_random_uuid()'],
    ['change a line of the register', 'update "RegisterLine" set "toSecond" = 1'],
    ['remove an event', 'delete from "TurnEvent"'],
    ['rewrite the audit', `update "AuditEntry" set action = ''`],
    ['edit a version of the policy', 'update "PolicyVersion" set "toleranceSeconds" = 0'],
    ['mark a club as a demo', 'update "Club" set "isDemo" = true'],
    ['read the record of migrations', 'select from _prisma_migrations'],
    ['make a table', 'create table mine (id int)'],
    ['lift the guard of a table', 'alter table "Player" disable row level security'],
    ['drop a policy', 'drop policy club_only on "Player"'],
    ['give itself rights', `select grant_app_rights('turnbook_app')`],
    ['turn off triggers', 'set session_replication_role = replica'],
  ])('do not let it %s', async (_what, statement) => {
    const failure = await askAs(testDatabase().appUrl, (client) => failureOf(client, statement))
    expect(failure).toMatchObject({ code: '42501' })
  })

  it('are given anew, and whatever else it had is taken away', async () => {
    await ownerDatabase().$executeRawUnsafe('grant all on "AuditEntry", _prisma_migrations to turnbook_app')
    await ownerDatabase().$executeRawUnsafe(`grant update ("clubId") on "Player" to turnbook_app`)
    await ownerDatabase().$queryRawUnsafe(`select grant_app_rights('turnbook_app')::text`)
    const may = await askAs(testDatabase().ownerUrl, async (client) => {
      const { rows } = await client.query(`
        select has_table_privilege('turnbook_app', '"AuditEntry"', 'DELETE') as audit,
          has_table_privilege('turnbook_app', '_prisma_migrations', 'SELECT') as migrations,
          has_column_privilege('turnbook_app', '"Player"', 'clubId', 'UPDATE') as club,
          has_column_privilege('turnbook_app', '"Player"', 'name', 'UPDATE') as name`)
      return rows[0]
    })
    expect(may).toEqual({ audit: false, migrations: false, club: false, name: true })
  })
})
