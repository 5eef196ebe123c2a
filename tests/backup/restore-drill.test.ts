import { statSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { daysLater } from '#common/days-later'
import { allDays } from '#common/time'
import { listAccounts } from '#data/accounts'
import { listAudit } from '#data/audit'
import { closeDatabase, type Database, openDatabase } from '#data/database'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { listSquadPlayers } from '#data/players'
import { exportFile } from '#server/export-file'
import { rebuildSquad } from '#server/rebuild'
import { calendarDay, clubId, demoSquads } from '../../seeds/club'
import { migrate } from '../../src/boot/migrate.mjs'
import { askAs, failureOf } from '../support/ask-as'
import { loadDemoBook } from '../support/demo-book'
import { withPlainOwner } from '../support/plain-owner'
import { ownerDatabase } from '../support/test-club'
import { cloneTestDatabase, type TestDatabase, testDatabase } from '../support/test-database'
import { backUp, hashesOf, plainOf, putBack } from '../support/whole-book'

const { ownerUrl } = testDatabase()
const squadId = demoSquads.underTen.id
const players = (tx: ClubTx) => listSquadPlayers(tx, squadId)

let other: TestDatabase
let otherApp: Database
let file: string
let before: Readonly<Record<string, string>>

beforeAll(async () => {
  await loadDemoBook()
  before = await hashesOf(ownerUrl)
  other = await cloneTestDatabase()
  otherApp = openDatabase(other.appUrl, { connections: 3 })
  file = await backUp(ownerUrl)
  await putBack(other.ownerUrl, file)
}, 60_000)
afterAll(async () => {
  await closeDatabase(otherApp)
  await other.drop()
})

describe('a restore drill with the demo club', () => {
  it('brings every table back, row for row', async () => {
    expect(before.TurnSeat).toMatch(/^\d{4,} /)
    expect(await hashesOf(other.ownerUrl)).toEqual(before)
  })

  it('is noted in the record of what was done, with the backup’s time', async () => {
    const deeds = await inClub(clubId, (tx) => listAudit(tx, { limit: 1 }), { database: otherApp })
    const detail = { madeAt: expect.stringMatching(/^\d{4}-.*Z$/) }
    expect(deeds).toMatchObject([{ action: 'restoreBackup', objectId: clubId, personName: null, detail }])
  })

  it('brings the season book back, and sums that are those of what was written', async () => {
    const read = (database: Database) =>
      inClub(
        clubId,
        async (tx) => ({
          book: (await exportFile(tx, 'book', { squadId, ...allDays })).text,
          accounts: await listAccounts(tx, { squadId, ...allDays }),
        }),
        { database },
      )
    const restored = await read(otherApp)
    expect(restored).toEqual(await read(ownerDatabase()))
    expect(restored.accounts.length).toBeGreaterThan(30)
    await inClub(clubId, (tx) => rebuildSquad(tx, { squadId, to: daysLater(calendarDay, -1) }), {
      database: otherApp,
    })
    expect((await read(otherApp)).accounts).toEqual(restored.accounts)
  }, 30_000)

  it('is for its owner’s eyes, and holds no name in the clear', async () => {
    expect(statSync(file).mode & 0o777).toBe(0o600)
    const named = await inClub(clubId, players, { database: otherApp })
    const plain = plainOf(file)
    for (const { name } of named) expect(plain).toContain(name)
  })

  it('leaves what guards the tables as it was', async () => {
    const guards = (url: string) =>
      askAs(url, async (client) => {
        const { rows } = await client.query(`
          select c.relname, c.relrowsecurity, c.relforcerowsecurity, t.tgname, t.tgenabled
          from pg_class c left join pg_trigger t on t.tgrelid = c.oid and not t.tgisinternal
          where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' order by 1, 4`)
        return rows
      })
    expect(await guards(other.ownerUrl)).toEqual(await guards(ownerUrl))
    const failure = await askAs(other.ownerUrl, (client) => failureOf(client, 'delete from "TurnEvent"'))
    expect(failure?.constraint).toBe('TurnEvent_append_only')
  })

  it('is the same from and to a server whose owner is no superuser', async () => {
    await withPlainOwner(async (plain) => {
      await migrate({ connectionString: plain.ownerUrl })
      await putBack(plain.ownerUrl, file)
      const again = await backUp(plain.ownerUrl)
      // All rows, but those that note the putting back.
      const rowsOf = (path: string) =>
        plainOf(path)
          .split('\n')
          .filter((line) => !line.startsWith('{') && !line.includes('restoreBackup'))
          .join('\n')
      expect(rowsOf(again)).toBe(rowsOf(file))
      // Over a book that is there, too.
      await putBack(plain.ownerUrl, again)
      expect(rowsOf(await backUp(plain.ownerUrl))).toBe(rowsOf(file))
    })
  }, 30_000)

  it('takes a new table with it by itself', async () => {
    await askAs(other.ownerUrl, async (client) => {
      await client.query('create table "Scrap" (id int primary key, "clubId" uuid, text text)')
      await client.query(`insert into "Scrap" values (2, null, e'two\\n\\\\.\\nlines'), (1, $1, null)`, [
        newId(),
      ])
    })
    const hashes = await hashesOf(other.ownerUrl)
    const withScrap = await backUp(other.ownerUrl)
    await askAs(other.ownerUrl, (client) => client.query('delete from "Scrap"'))
    await putBack(other.ownerUrl, withScrap)
    expect(await hashesOf(other.ownerUrl)).toEqual(hashes)
    await askAs(other.ownerUrl, (client) => client.query('drop table "Scrap"'))
  })

  it('lets pages go on: none fails, and each sees all of the old book or all of the new', async () => {
    await askAs(other.ownerUrl, async (client) => {
      await client.query('begin')
      await client.query(`select set_config('app.club_id', $1, true)`, [clubId])
      await client.query(`update "Player" set name = 'Changed ' || left(id::text, 8)`)
      await client.query('commit')
    })
    let isDone = false
    const seen: string[] = []
    const page = async () => {
      while (!isDone) {
        const seenNow = await inClub(clubId, players, { database: otherApp })
        const changed = seenNow.filter(({ name }) => name.startsWith('Changed')).length
        seen.push(changed === 0 ? 'old' : changed === seenNow.length ? 'changed' : `${changed} changed`)
      }
    }
    const pages = [page(), page()]
    await putBack(other.ownerUrl, file)
    await inClub(clubId, players, { database: otherApp })
    isDone = true
    await Promise.all(pages)
    expect(new Set(seen)).toEqual(new Set(['changed', 'old']))
    expect(await hashesOf(other.ownerUrl)).toEqual(before)
  }, 30_000)
})
