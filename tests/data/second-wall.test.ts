import type pg from 'pg'
import { beforeAll, describe, expect, it } from 'vitest'
import { listAccounts } from '#data/accounts'
import { recordAudit } from '#data/audit'
import { recordRequest } from '#data/child-requests'
import { listClubPlayers } from '#data/club-players'
import { recordConsent } from '#data/consents'
import { closeDatabase, openDatabase } from '#data/database'
import { eraseChild } from '#data/erasures'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { recordKeepsChange } from '#data/keeps-changes'
import { recordLink } from '#data/one-time-links'
import { listSquadPlayers } from '#data/players'
import { calendarDay, clubId, demoSquads, personId } from '../../seeds/club'
import { playerId } from '../../seeds/names'
import { askAs } from '../support/ask-as'
import { loadDemoBook } from '../support/demo-book'
import { aClub } from '../support/test-club'
import { testDatabase } from '../support/test-database'

// No check of ours is asked here: the role of the app asks the database itself, as if every check were forgotten.

const guardian = personId('chinwe')
const ownChild = playerId('adaeze')
const outside = [
  '_prisma_migrations',
  'Login',
  'LoginSession',
  'LoginMethod',
  'LoginProof',
  'Passkey',
  'RateLimit',
]

type Table = { readonly name: string; readonly columns: readonly string[] }
let tables: readonly Table[]
/** Every other child and every other guardian of the club, by id and by name. */
let others: readonly string[]

beforeAll(async () => {
  await loadDemoBook()
  await fillGaps()
  tables = await listTables()
  others = await askInClub(testDatabase().ownerUrl, {}, async (client) => {
    const { rows } = await client.query<{ id: string; name: string }>(
      `select id::text, name from "Player" where id <> $1
       union all select id::text, name from "Person" where role = 'guardian' and id <> $2`,
      [ownChild, guardian],
    )
    return rows.flatMap(({ id, name }) => [id, name])
  })
  expect(others.length).toBeGreaterThan(40)
}, 60_000)

/** Rows of another child, and of the other guardian of this one, where the demo has none. */
async function fillGaps() {
  await inClub(clubId, async (tx) => {
    const at = new Date('2026-06-08T12:00:00Z')
    const by = { personId: personId('maren'), at }
    const day = calendarDay
    for (const [child, askedById] of [
      [playerId('dev'), personId('tamsin')],
      [ownChild, personId('uchenna')],
    ] as const) {
      const own = { playerId: child, text: 'What is kept?', receivedOn: day, dueOn: '2026-07-08' }
      await recordRequest(tx, { id: newId(), kind: 'question', askedById, ...own })
      const agreed = { playerId: child, kind: 'messages', wording: 'Yes.', givenById: askedById } as const
      await recordConsent(tx, { id: newId(), ...agreed, givenOn: day, by })
    }
    const [kiri, hugo] = [playerId('kiri'), playerId('hugo')]
    const link = { id: newId(), kind: 'family', personId: personId('tamsin'), playerId: kiri } as const
    const expiresAt = new Date('2026-06-20T12:00:00Z')
    const secretHash = 'a'.repeat(64)
    await recordLink(tx, { ...link, secretHash, expiresAt, madeById: by.personId, madeAt: at })
    await recordKeepsChange(tx, { playerId: kiri, day, keeps: false, today: day, by })
    await eraseChild(tx, { playerId: hugo, cause: 'request', by })
    for (const personId of [guardian, by.personId]) {
      const deed = {
        action: 'look',
        objectKind: 'player',
        objectId: ownChild,
        detail: { page: 'family' },
      } as const
      await recordAudit(tx, { ...deed, by: { personId, at } })
    }
  })
}

type Serving = { readonly club?: string; readonly guardianId?: string }

/** A transaction in a club, serving a guardian or nobody; nothing of it stays. */
async function askInClub<Answer>(
  url: string,
  { club = clubId, guardianId = '' }: Serving,
  work: (client: pg.Client) => Promise<Answer>,
): Promise<Answer> {
  return askAs(url, async (client) => {
    await client.query('begin')
    await client.query(
      `select set_config('app.club_id', $1, true), set_config('app.guardian_id', $2, true)`,
      [club, guardianId],
    )
    return work(client)
  })
}

async function listTables(): Promise<readonly Table[]> {
  return askAs(testDatabase().ownerUrl, async (client) => {
    const { rows } = await client.query<{ name: string; columns: string[] }>(`
      select c.relname as name, array_agg(a.attname::text order by a.attnum) as columns
      from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped
      where c.relnamespace = 'public'::regnamespace and c.relkind in ('r', 'p') group by 1 order by 1`)
    return rows.filter(({ name }) => !outside.includes(name))
  })
}

/** Every row of every table as text. */
async function rowsSeen(url: string, serving: Serving): Promise<ReadonlyMap<string, readonly string[]>> {
  return askInClub(url, serving, async (client) => {
    const seen = new Map<string, readonly string[]>()
    for (const { name } of tables) {
      const { rows } = await client.query<{ row: string }>(`select t::text as row from "${name}" t`)
      seen.set(
        name,
        rows.map(({ row }) => row),
      )
    }
    return seen
  })
}

const asGuardian = (serving: Serving) => rowsSeen(testDatabase().appUrl, serving)
const namingOthers = (rows: readonly string[]) =>
  rows.filter((row) => others.some((other) => row.includes(other)))

describe('a transaction that serves a guardian', () => {
  it('sees no other child and no other guardian in any table, by id or by name', async () => {
    const everything = await rowsSeen(testDatabase().ownerUrl, {})
    // A table without a row of somebody else holds nothing back, and a new one is to be filled above.
    const ofChildren = tables.filter(({ columns }) => columns.includes('playerId')).map(({ name }) => name)
    expect(ofChildren.length).toBeGreaterThan(12)
    expect(ofChildren.filter((name) => namingOthers(everything.get(name) ?? []).length === 0)).toEqual([])
    const seen = await asGuardian({ guardianId: guardian })
    expect(tables.filter(({ name }) => namingOthers(seen.get(name) ?? []).length > 0)).toEqual([])
    // And yet its own child is there.
    expect(seen.get('Player')).toEqual([expect.stringContaining(ownChild)])
    for (const name of [
      'Exposure',
      'SessionPresence',
      'FamilyPage',
      'ChildRequest',
      'Consent',
      'Guardianship',
    ])
      expect([name, seen.get(name)?.length]).not.toEqual([name, 0])
  })

  it('sees no child at all whose page it has not claimed', async () => {
    const seen = await asGuardian({ guardianId: personId('tamsin') })
    for (const name of ['Player', 'SquadMembership', 'Exposure', 'FamilyPage', 'Squad', 'Session'])
      expect([name, seen.get(name)]).toEqual([name, []])
  })

  it('sees nothing of the club from within another one', async () => {
    const { club } = await aClub()
    const seen = await asGuardian({ club: club.id, guardianId: guardian })
    const rows = [...seen.values()].flat()
    expect(rows.filter((row) => row.includes(clubId) || row.includes(ownChild))).toEqual([])
  })

  it('is served by what the program reads its children with, too, where nobody asked whether it may', async () => {
    const [players, members, accounts] = await inClub(
      clubId,
      async (tx) => {
        const squadId = demoSquads.underTen.id
        return [
          await listClubPlayers(tx),
          await listSquadPlayers(tx, squadId),
          await listAccounts(tx, { squadId, from: '2025-09-01', to: calendarDay }),
        ] as const
      },
      { guardianId: guardian },
    )
    expect([players, members].map((list) => list.map(({ id }) => id))).toEqual([[ownChild], [ownChild]])
    expect(accounts.length).toBeGreaterThan(10)
    expect(namingOthers(accounts.map((account) => JSON.stringify(account)))).toEqual([])
  })

  it('alters and removes nothing, whatever stands there', async () => {
    const touched = (serving: Serving) =>
      askInClub(testDatabase().appUrl, serving, async (client) => {
        const done: string[] = []
        for (const { name, columns } of tables)
          for (const statement of [
            ...columns.map((column) => `update "${name}" set "${column}" = "${column}"`),
            `delete from "${name}"`,
          ])
            if ((await rowsOf(client, statement)) > 0) done.push(statement)
        return done
      })
    expect(await touched({ guardianId: guardian })).toEqual([])
    expect((await touched({})).length).toBeGreaterThan(50)
  })

  it('adds nothing but what it asks itself about its own child, and the line that says so', async () => {
    const everything = await askInClub(testDatabase().ownerUrl, {}, async (client) => {
      const rows: (readonly [string, string])[] = []
      for (const { name } of tables) {
        const answer = await client.query<{ row: string }>(
          `select to_jsonb(t)::text as row from "${name}" t limit 300`,
        )
        rows.push(...answer.rows.map(({ row }) => [name, row] as const))
      }
      return rows
    })
    const added = await askInClub(testDatabase().appUrl, { guardianId: guardian }, async (client) => {
      const done: (readonly [string, Record<string, unknown>])[] = []
      for (const [name, row] of everything) {
        const fresh = { ...JSON.parse(row), ...('id' in JSON.parse(row) && { id: newId() }) }
        const insert = `insert into "${name}" select (jsonb_populate_record(null::"${name}", $1)).*`
        if ((await rowsOf(client, insert, [JSON.stringify(fresh)])) > 0) done.push([name, fresh])
      }
      return done
    })
    expect(new Set(added.map(([name]) => name))).toEqual(new Set(['AuditEntry', 'ChildRequest']))
    for (const [name, row] of added) {
      if (name === 'AuditEntry') expect(row.personId).toBe(guardian)
      else expect([row.playerId, row.askedById]).toEqual([ownChild, guardian])
    }
  }, 60_000)
})

/** How many rows a statement touches; none when it is refused. The transaction goes on either way. */
async function rowsOf(client: pg.Client, statement: string, values: readonly string[] = []): Promise<number> {
  await client.query('savepoint here')
  const touched = await client.query(statement, [...values]).then(
    ({ rowCount }) => rowCount ?? 0,
    () => 0,
  )
  await client.query('rollback to savepoint here')
  return touched
}

describe('the policies that hold guardians', () => {
  // Estimates of half the rows made the planner choose joins that took several times as long.
  it('leave the planner its estimates for everybody else', async () => {
    await askAs(testDatabase().ownerUrl, (client) => client.query('analyze'))
    for (const name of ['Exposure', 'SessionPresence', 'RegisterLine', 'Session']) {
      const [guessed, real] = await askInClub(testDatabase().appUrl, {}, async (client) => {
        const plan = await client.query(`explain (format json) select from "${name}" where "clubId" = $1`, [
          clubId,
        ])
        const counted = await client.query(`select count(*)::int as real from "${name}"`)
        return [plan.rows[0]['QUERY PLAN'][0].Plan['Plan Rows'], counted.rows[0].real]
      })
      expect([name, guessed > 0.9 * real]).toEqual([name, true])
    }
  })
})

describe('whom a transaction serves', () => {
  it('is forgotten with it, on the same connection', async () => {
    const database = openDatabase(testDatabase().appUrl, { connections: 1 })
    try {
      const count = (guardianId: string | null) =>
        inClub(clubId, (tx) => tx.db.player.count(), { database, guardianId })
      expect(await count(guardian)).toBe(1)
      expect(await count(null)).toBeGreaterThan(20)
      const failed = inClub(clubId, () => Promise.reject(new Error('changed its mind')), {
        database,
        guardianId: guardian,
      })
      await expect(failed).rejects.toThrow('changed its mind')
      expect(await count(null)).toBeGreaterThan(20)
      const [left] = await database.$queryRaw<{ left: string | null }[]>`
        select nullif(current_setting('app.guardian_id', true), '') as left`
      expect(left).toEqual({ left: null })
      expect(await database.player.count()).toBe(0)
    } finally {
      await closeDatabase(database)
    }
  })
})
