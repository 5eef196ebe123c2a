import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { loadDemoClub } from '../../seeds/load-demo-club'
import { ownerDatabase } from '../support/test-club'
import { cloneTestDatabase, type TestDatabase, testDatabase } from '../support/test-database'
import { backUp, hashesOf, putBack } from '../support/whole-book'

const { ownerUrl } = testDatabase()
let other: TestDatabase

beforeAll(async () => {
  await loadDemoClub(ownerDatabase(), () => {})
  other = await cloneTestDatabase()
}, 60_000)
afterAll(() => other.drop())

describe('a restore drill', () => {
  it('brings every table back, row for row, in an empty database', async () => {
    const before = await hashesOf(ownerUrl)
    const file = await backUp(ownerUrl)
    await putBack(other.ownerUrl, file)
    expect(await hashesOf(other.ownerUrl)).toEqual(before)
  })
})
