import { describe, expect, it } from 'vitest'
import { getClub, recordClub } from '#data/clubs'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { listSquadPlayers, recordPlayers } from '#data/players'
import { askAs, failureOf } from '../support/ask-as'
import { aClub, aRosterPlayer } from '../support/test-club'
import { testDatabase } from '../support/test-database'

/**
 * Tables that no club is set for: who can sign in, in whatever clubs, and how; counts of tries; and the record of
 * migrations, which the app may not even read.
 */
const signIns = ['Login', 'LoginMethod', 'LoginProof', 'LoginSession', 'Passkey', 'RateLimit']
const exempt = [...signIns, '_prisma_migrations']

type Table = {
  readonly name: string
  readonly isGuarded: boolean
  readonly isForced: boolean
  readonly hasClubId: boolean
  readonly policies: readonly string[] | null
}

function listTables(): Promise<readonly Table[]> {
  return askAs(testDatabase().ownerUrl, async (client) => {
    const { rows } = await client.query<Table>(`
      select c.relname as name, c.relrowsecurity as "isGuarded", c.relforcerowsecurity as "isForced",
        exists (select from pg_attribute a where a.attrelid = c.oid and a.attname = 'clubId') as "hasClubId",
        (select array_agg(p.polname::text order by p.polname) from pg_policy p where p.polrelid = c.oid) as policies
      from pg_class c where c.relnamespace = 'public'::regnamespace and c.relkind in ('r', 'p') order by 1`)
    return rows
  })
}

describe('every table', () => {
  it('is guarded by club, for its owner too, but for those that are listed here', async () => {
    const tables = await listTables()
    expect(tables.length).toBeGreaterThan(20)
    const unguarded = tables.filter(({ isGuarded, isForced }) => !(isGuarded && isForced))
    expect(unguarded.map(({ name }) => name)).toEqual(exempt)
    // A session says as whom it looks at which club.
    const withoutClub = exempt.filter((name) => name !== 'LoginSession')
    expect(tables.filter(({ hasClubId }) => !hasClubId).map(({ name }) => name)).toEqual([
      'Club',
      ...withoutClub,
    ])
  })

  it('has that policy and those that hold guardians, and where clubs and people are listed one more for the owner', async () => {
    const guarded = (await listTables()).filter(({ isGuarded }) => isGuarded)
    const forGuardians = ['guardian_adds', 'guardian_alters', 'guardian_removes', 'guardian_sees']
    for (const { policies } of guarded) expect(policies).toEqual(expect.arrayContaining(forGuardians))
    const others = guarded
      .map(
        ({ name, policies }) => [name, policies?.filter((policy) => !forGuardians.includes(policy))] as const,
      )
      .filter(([, policies]) => policies?.join() !== 'club_only')
    expect(others).toEqual([
      ['Club', ['club_only', 'owner_lists_clubs']],
      ['Person', ['club_only', 'owner_lists_people']],
    ])
  })

  it('has a key that begins with the club', async () => {
    const keys = await askAs(testDatabase().ownerUrl, async (client) => {
      const { rows } = await client.query<{ name: string; first: string }>(`
        select c.relname as name, a.attname as first
        from pg_index i join pg_class c on c.oid = i.indrelid
          join pg_attribute a on a.attrelid = c.oid and a.attnum = i.indkey[0]
        where i.indisprimary and c.relnamespace = 'public'::regnamespace`)
      return rows
    })
    expect(keys.filter(({ first }) => first !== 'clubId').map(({ name }) => name)).toEqual(
      expect.arrayContaining(['Club', ...exempt]),
    )
    expect(keys.filter(({ first }) => first === 'clubId')).toHaveLength(keys.length - 1 - exempt.length)
  })
})

describe('the app', () => {
  it('sees nothing in any table while no club is set, nor once a transaction that set one has ended', async () => {
    const { club } = await aClub()
    const names = (await listTables()).map(({ name }) => name).filter((name) => !exempt.includes(name))
    await askAs(testDatabase().appUrl, async (client) => {
      const counting = names.map((name) => `select count(*)::int as rows from "${name}"`).join(' union all ')
      const seen = async () => (await client.query(counting)).rows.map(({ rows }) => rows as number)
      expect(await seen()).toEqual(names.map(() => 0))
      await client.query(`begin; select set_config('app.club_id', '${club.id}', true)`)
      expect((await seen()).filter((rows) => rows > 0).length).toBeGreaterThan(5)
      await client.query('commit')
      expect(await seen()).toEqual(names.map(() => 0))
    })
  })

  it('sees nothing of another club, and can change nothing of it', async () => {
    const own = await aClub()
    const other = await aClub()
    expect(await own.run((tx) => listSquadPlayers(tx, other.squadId))).toEqual([])
    await askAs(testDatabase().appUrl, async (client) => {
      await client.query(`begin; select set_config('app.club_id', '${own.club.id}', true)`)
      const { rowCount: seen } = await client.query(
        `select from "Player" where "clubId" = '${other.club.id}'`,
      )
      const { rowCount: changed } = await client.query(
        `update "Player" set name = 'Nobody' where "clubId" = '${other.club.id}'`,
      )
      const { rowCount: removed } = await client.query(
        `delete from "Guardianship" where "clubId" = '${other.club.id}'`,
      )
      await client.query('commit')
      expect([seen, changed, removed]).toEqual([0, 0, 0])
    })
    const names = await other.run((tx) => listSquadPlayers(tx, other.squadId))
    expect(names.map(({ name }) => name)).not.toContain('Nobody')
  })

  it('cannot put a row into another club', async () => {
    const own = await aClub()
    const other = await aClub()
    const intoOther = own.run((tx) => recordPlayers({ ...tx, clubId: other.club.id }, [aRosterPlayer()]))
    await expect(intoOther).rejects.toThrow(/row-level security/)
  })

  it('cannot point from its own club at a row of another', async () => {
    const own = await aClub()
    const other = await aClub()
    const failure = await askAs(testDatabase().appUrl, (client) =>
      failureOf(
        client,
        `select set_config('app.club_id', '${own.club.id}', true);
         insert into "Guardianship" values ('${own.club.id}', '${own.guardianId}', '${other.playerIds[0]}')`,
      ),
    )
    expect(failure).toMatchObject({ constraint: 'Guardianship_clubId_playerId_fkey' })
  })

  it('keeps two hundred transactions of two clubs apart', async () => {
    const clubs = [await aClub({ name: 'One', players: 3 }), await aClub({ name: 'Two', players: 7 })]
    const answers = await Promise.all(
      Array.from({ length: 200 }, async (_, index) => {
        const at = clubs[index % 2] as (typeof clubs)[number]
        const [club, players] = await at.run(async (tx) => [
          await getClub(tx),
          await listSquadPlayers(tx, at.squadId),
        ])
        return [club.name, players.length]
      }),
    )
    expect(answers).toEqual(answers.map((_, index) => (index % 2 ? ['Two', 7] : ['One', 3])))
  })

  it('cannot enter a club', async () => {
    const club = {
      id: newId(),
      name: 'New',
      timeZone: 'Europe/London',
      locale: 'en-GB',
      isDemo: false,
      calendarDay: null,
    }
    await expect(inClub(club.id, (tx) => recordClub(tx, club))).rejects.toThrow(/permission denied/)
  })
})

describe('the role of the app', () => {
  it('owns nothing, is no superuser, may not pass the policies, and cannot become the owner', async () => {
    await askAs(testDatabase().ownerUrl, async (client) => {
      const { rows: roles } = await client.query(
        `select rolsuper, rolbypassrls, rolcreaterole, rolcreatedb, rolreplication from pg_roles where rolname = 'turnbook_app'`,
      )
      expect(new Set(Object.values(roles[0]))).toEqual(new Set([false]))
      const { rows: owned } = await client.query(`
        select relname from pg_class where relowner = 'turnbook_app'::regrole
        union all select proname from pg_proc where proowner = 'turnbook_app'::regrole
        union all select datname from pg_database where datdba = 'turnbook_app'::regrole
        union all select roleid::regrole::text from pg_auth_members where member = 'turnbook_app'::regrole`)
      expect(owned).toEqual([])
    })
  })
})
