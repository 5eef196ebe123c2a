import { describe, expect, it } from 'vitest'
import { isReady } from '#server/readiness'
import { ownerDatabase } from '../support/test-club'

const newest = 'select max(migration_name) from _prisma_migrations'

describe('ready', () => {
  it('it is when the tables are those of this build, and not when they are older or newer', async () => {
    const owner = ownerDatabase()
    expect(await isReady(0)).toBe(true)
    await owner.$executeRawUnsafe(
      `update _prisma_migrations set rolled_back_at = now() where migration_name = (${newest})`,
    )
    // What was found a moment ago is said again; then it is looked anew.
    expect(await isReady(900)).toBe(true)
    expect(await isReady(2_000)).toBe(false)
    await owner.$executeRawUnsafe('update _prisma_migrations set rolled_back_at = null')
    expect(await isReady(4_000)).toBe(true)
    await owner.$executeRawUnsafe(
      `update _prisma_migrations set migration_name = '99991231000000_of_tomorrow' where migration_name = (${newest})`,
    )
    expect(await isReady(6_000)).toBe(false)
  })
})
