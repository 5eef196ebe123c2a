import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { daysLater } from '#common/days-later'
import { saveClubRights } from '#data/club-rights'
import { listErasedIds } from '#data/erasures'
import { inClub } from '#data/in-club'
import { listChildDays } from '#data/retention-days'
import { listSeasons } from '#data/seasons'
import { retentionOf } from '#rights/retention'
import { forgetChildren } from '../../src/boot/forget-children.mjs'
import { askAs } from '../support/ask-as'
import { aClub, ownerDatabase } from '../support/test-club'
import { testDatabase } from '../support/test-database'

it('a start forgets the same children as the pages do, and notes each outside of the database', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'turnbook-forgotten-'))
  const at = await aClub({ players: 8, isDemo: true })
  const months = 2
  const today = '2027-09-01'
  // A demo's calendar stands still: the same today for both.
  await inClub(
    at.club.id,
    (tx) => tx.db.club.update({ where: { id: at.club.id }, data: { calendarDay: new Date(today) } }),
    { database: ownerDatabase() },
  )
  const lastDays = fc.sample(
    fc.array(fc.option(fc.integer({ min: -40, max: 400 }), { nil: null }), { minLength: 8, maxLength: 8 }),
    { seed: 7, numRuns: 1 },
  )[0] as (number | null)[]
  // The edges too: the season's end and two months, the day before it, and a day between seasons.
  const chosen = [...lastDays.slice(0, 4), 333, 334, 335, 395]
  await at.run(async (tx) => {
    for (const [index, days] of chosen.entries())
      await tx.db.squadMembership.updateMany({
        where: { clubId: tx.clubId, playerId: at.playerIds[index] },
        data: {
          firstDay: new Date('2026-06-01'),
          lastDay: days === null ? null : new Date(daysLater('2026-08-01', days)),
        },
      })
    await saveClubRights(tx, { retentionMonths: months, askWhom: '', holidays: [] })
  })
  const rule = await at.run(async (tx) => {
    const { over } = retentionOf(await listChildDays(tx), { seasons: await listSeasons(tx), months, today })
    return over.map(({ playerId }) => playerId)
  })
  expect(rule.length).toBeGreaterThan(1)
  expect(rule.length).toBeLessThan(8)
  const gone = await askAs(testDatabase().ownerUrl, (owner) => forgetChildren(owner, folder))
  expect([...(await at.run(listErasedIds))].toSorted()).toEqual(rule.toSorted())
  expect(gone).toBe(rule.length)
  expect(await askAs(testDatabase().ownerUrl, (owner) => forgetChildren(owner, folder))).toBe(0)
  const lines = (await readFile(join(folder, 'erased.jsonl'), 'utf8')).trim().split('\n')
  expect(lines.map((line) => JSON.parse(line).playerId).toSorted()).toEqual(rule.toSorted())
  const kept = await at.run((tx) => tx.db.erasure.findMany({ where: { clubId: tx.clubId } }))
  expect(new Set(lines.map((line) => JSON.parse(line).erasedAt))).toEqual(
    new Set(kept.map((one) => one.erasedAt.toISOString())),
  )
  await rm(folder, { recursive: true })
})
