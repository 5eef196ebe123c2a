import { createHash } from 'node:crypto'
import { beforeAll, describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { askAs } from '../support/ask-as'
import { recordBook, richBook } from '../support/random-book'
import { aClub, type TestClub } from '../support/test-club'
import { testDatabase } from '../support/test-database'
import { backUp, putBack } from '../support/whole-book'

const { ownerUrl } = testDatabase()
const erasedAt = '2026-10-01T09:00:00.000Z'
let club: TestClub
let file: string
let inDatabase: string
let onlyInList: string

async function inside(
  statement: string,
  values: readonly unknown[] = [],
): Promise<Record<string, unknown>[]> {
  return askAs(ownerUrl, async (client) => {
    await client.query('begin')
    await client.query(`select set_config('app.club_id', $1, true)`, [club.club.id])
    const { rows } = await client.query(statement, [...values])
    await client.query('commit')
    return rows
  })
}

beforeAll(async () => {
  club = await aClub()
  await recordBook(club, richBook(70))
  ;[inDatabase, onlyInList] = club.playerIds as [string, string]
  for (const playerId of [inDatabase, onlyInList])
    await inside(`update "Player" set name = 'Wim Erased ' || left(id::text, 20) where id = $1`, [playerId])
  file = await backUp(ownerUrl)
}, 60_000)

describe('a child who was erased after a backup', () => {
  it('stays erased when it is put back: by the database’s own note, and by the list beside it', async () => {
    await inside(`select erase_child($1, 'request', $2, null)`, [inDatabase, erasedAt])
    const note = { clubId: club.club.id, playerId: onlyInList, cause: 'retention' as const, erasedAt }
    const unknown = { ...note, playerId: newId() }
    expect(await putBack(ownerUrl, file, [note, unknown])).toEqual({ erasedAgain: 2 })
    const rows = await inside(
      `select p.name, p."erasedAt", e.cause from "Player" p join "Erasure" e on e."playerId" = p.id order by e.cause`,
    )
    expect(rows).toEqual([
      { name: expect.stringMatching(/^Former player \d$/), erasedAt: new Date(erasedAt), cause: 'request' },
      { name: expect.stringMatching(/^Former player \d$/), erasedAt: new Date(erasedAt), cause: 'retention' },
    ])
    // Nowhere in any row of any table.
    const found = await askAs(ownerUrl, async (client) => {
      const { rows: tables } = await client.query(
        `select relname as name from pg_class where relnamespace = 'public'::regnamespace and relkind = 'r'`,
      )
      const withName: string[] = []
      for (const { name } of tables) {
        const { rowCount } = await client.query(
          `select from "${name}" t where to_jsonb(t)::text like '%Wim Erased%'`,
        )
        if (rowCount) withName.push(name)
      }
      return withName
    })
    expect(found).toEqual([])
  })

  it('is not brought back by putting the same backup back a second time', async () => {
    // Both are in the database now, so no list is needed.
    expect(await putBack(ownerUrl, file)).toEqual({ erasedAgain: 2 })
  })
})

describe('what opens a door', () => {
  it('is shut by a restore: nobody stays signed in, and no link or code given away opens anything', async () => {
    const hash = (text: string) => createHash('sha256').update(text).digest('hex')
    const loginId = newId()
    await askAs(ownerUrl, (client) =>
      client.query(`insert into "Login" (id, email, name) values ($1, 'lou@example.org', 'Lou Wynd')`, [
        loginId,
      ]),
    )
    const link = [club.club.id, newId(), club.guardianId, hash('link')]
    await inside(
      `insert into "OneTimeLink" ("clubId", id, kind, "personId", "secretHash", "expiresAt", "madeAt")
       values ($1, $2, 'join', $3, $4, now() + interval '3 days', now())`,
      link,
    )
    await inside(
      `insert into "CalendarFeed" ("clubId", id, "personId", "secretHash", "squadIds", "madeAt")
       values ($1, $2, $3, $4, '{}', now())`,
      [club.club.id, newId(), club.guardianId, hash('calendar')],
    )
    const withDoors = await backUp(ownerUrl)
    await askAs(ownerUrl, (client) =>
      client.query(
        `insert into "LoginSession" (id, "loginId", token, "expiresAt") values ($1, $2, $3, now() + interval '1 day')`,
        [newId(), loginId, hash('token')],
      ),
    )
    await askAs(ownerUrl, (client) =>
      client.query(`insert into "RateLimit" (key, points) values ('sign-in', 5)`),
    )
    // Used in between: the book that comes back does not know it.
    await inside(`update "OneTimeLink" set "usedAt" = now()`)
    await putBack(ownerUrl, withDoors)
    expect(await inside('select from "LoginSession"')).toEqual([])
    expect(await inside('select from "RateLimit"')).toEqual([])
    expect(await inside('select email from "Login"')).toEqual([{ email: 'lou@example.org' }])
    expect(await inside('select from "OneTimeLink" where "usedAt" is null and "revokedAt" is null')).toEqual(
      [],
    )
    expect(await inside('select from "OneTimeLink"')).toHaveLength(1)
    expect(await inside('select from "CalendarFeed" where "revokedAt" is null')).toEqual([])
    expect(await inside('select from "CalendarFeed"')).toHaveLength(1)
  })
})
