import { describe, expect, it } from 'vitest'
import { listClubIds, recordClub } from '#data/clubs'
import { closeDatabase, openDatabase } from '#data/database'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { listDemoPeople, listPeople, recordPeople } from '#data/people'
import { migrate } from '../../src/boot/migrate.mjs'
import { withPlainOwner } from '../support/plain-owner'

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
