import { describe, expect, it } from 'vitest'
import { listClubIds, recordClub } from '#data/clubs'
import { closeDatabase, openDatabase } from '#data/database'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { listDemoPeople, listPeople, recordPeople } from '#data/people'
import { migrate } from '../../src/boot/migrate.mjs'
import { askAs } from '../support/ask-as'
import { testDatabase } from '../support/test-database'

/** A database of its own, made by a role that is no superuser, as on somebody else's server. */
async function withPlainOwner(
  work: (urls: { ownerUrl: string; appUrl: string }) => Promise<void>,
): Promise<void> {
  const { ownerUrl, appUrl } = testDatabase()
  const name = `tb_plain_${newId().slice(-8)}`
  const at = (url: string, role?: string) => {
    const moved = new URL(url)
    moved.pathname = name
    if (role) moved.username = role
    if (role) moved.password = 'only-for-tests'
    return moved.href
  }
  await askAs(ownerUrl, async (client) => {
    await client.query(`create role ${name} login nosuperuser password 'only-for-tests'`)
    await client.query(`create database ${name} owner ${name}`)
  })
  try {
    await work({ ownerUrl: at(ownerUrl, name), appUrl: at(appUrl) })
  } finally {
    await askAs(ownerUrl, async (client) => {
      await client.query(`drop database ${name} with (force)`)
      await client.query(`drop role ${name}`)
    })
  }
}

describe('an owner of the tables who is no superuser', () => {
  it('can migrate, enter clubs and list them, and is bound by the policies otherwise', async () => {
    await withPlainOwner(async ({ ownerUrl, appUrl }) => {
      await migrate({ connectionString: ownerUrl })
      const owner = openDatabase(ownerUrl, { connections: 2 })
      const app = openDatabase(appUrl, { connections: 2 })
      try {
        const club = {
          name: 'Demo',
          timeZone: 'Europe/London',
          locale: 'en-GB',
          isDemo: true,
          calendarDay: '2026-05-01',
        }
        const ids = [newId(), newId()]
        for (const id of ids) await inClub(id, (tx) => recordClub(tx, { ...club, id }), { database: owner })
        expect(new Set(await listClubIds(owner))).toEqual(new Set(ids))
        const [first, second] = ids as [string, string]
        const people = [{ id: newId(), name: 'Lou Wynd', role: 'headCoach' as const }]
        await inClub(first, (tx) => recordPeople(tx, people), { database: app })
        expect(await inClub(second, listPeople, { database: owner })).toEqual([])
        expect(await listDemoPeople(app)).toMatchObject([{ name: 'Lou Wynd', clubId: first }])
        const { length } = await owner.season.findMany()
        expect(length).toBe(0)
      } finally {
        await Promise.all([closeDatabase(owner), closeDatabase(app)])
      }
    })
  })
})
