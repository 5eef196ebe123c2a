import { cp, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type pg from 'pg'
import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { listMigrations, migrate, migrationsFolder } from '../../src/boot/migrate.mjs'
import { askAs } from '../support/ask-as'
import { withPlainOwner } from '../support/plain-owner'

const moving = '20261126200000_add_weeks_ahead'

/** The migrations before the one that moves line-ups. */
async function withOlderMigrations(work: (folder: string) => Promise<void>): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'turnbook-older-'))
  try {
    for (const { name } of listMigrations().filter((one) => one.name < moving))
      await cp(join(migrationsFolder, name), join(folder, name), { recursive: true })
    await work(folder)
  } finally {
    await rm(folder, { recursive: true })
  }
}

type Club = { readonly club: string; readonly match: string; readonly practice: string }

/** A club with a line-up and a plan of a practice, as the tables were. */
async function enterOldClub(client: pg.Client): Promise<Club> {
  const [club, squad, match, practice] = [newId(), newId(), newId(), newId()]
  await client.query('begin')
  await client.query(`select set_config('app.club_id', $1, true)`, [club])
  await client.query(`insert into "Club" (id, name, "timeZone") values ($1, 'Old', 'Europe/London')`, [club])
  await client.query(`insert into "Squad" ("clubId", id, name, "ageLimit") values ($1, $2, 'Old', 10)`, [
    club,
    squad,
  ])
  for (const [id, kind] of [
    [match, 'match'],
    [practice, 'practice'],
  ])
    await client.query(
      `insert into "Session" ("clubId", id, "squadId", kind, day) values ($1, $2, $3, $4, '2026-05-02')`,
      [club, id, squad, kind],
    )
  const plan = (table: string, sessionId: string, version: number) =>
    client.query(
      `insert into "${table}" ("clubId", "sessionId", version, plan, "madeAt", "forgottenAt")
       values ($1, $2, $3, $4, '2026-05-01T10:00:00Z', '2026-06-01T10:00:00Z')`,
      [club, sessionId, version, JSON.stringify({ of: table, version })],
    )
  await plan('MatchPlan', match, 3)
  await plan('SessionPlan', practice, 2)
  await client.query('commit')
  return { club, match, practice }
}

describe('line-ups that stood in a table of their own', () => {
  it('stand beside the plans of practices after the migration, of every club, and nothing is lost', async () => {
    await withPlainOwner(({ ownerUrl }) =>
      withOlderMigrations(async (folder) => {
        await migrate({ connectionString: ownerUrl, folder })
        const clubs = await askAs(ownerUrl, async (client) => [
          await enterOldClub(client),
          await enterOldClub(client),
        ])
        expect(await migrate({ connectionString: ownerUrl })).toContain(moving)
        await askAs(ownerUrl, async (client) => {
          for (const { club, match, practice } of clubs) {
            await client.query(`select set_config('app.club_id', $1, false)`, [club])
            const { rows } = await client.query(
              `select "sessionId", version, plan, "madeAt", "forgottenAt" from "SessionPlan" order by version`,
            )
            const times = {
              madeAt: new Date('2026-05-01T10:00:00Z'),
              forgottenAt: new Date('2026-06-01T10:00:00Z'),
            }
            expect(rows).toEqual([
              { sessionId: practice, version: 2, plan: { of: 'SessionPlan', version: 2 }, ...times },
              { sessionId: match, version: 3, plan: { of: 'MatchPlan', version: 3 }, ...times },
            ])
          }
          // The guard that was lifted for the move stands again, for the owner too.
          await client.query(`select set_config('app.club_id', '', false)`)
          const { rowCount } = await client.query('select from "SessionPlan"')
          expect(rowCount).toBe(0)
          const { rows: old } = await client.query(`select to_regclass('"MatchPlan"') as name`)
          expect(old).toEqual([{ name: null }])
        })
      }),
    )
  }, 60_000)
})
