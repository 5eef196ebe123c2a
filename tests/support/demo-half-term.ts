import { closeDatabase, openDatabase } from '#data/database'
import { loadDemoAt } from '../../seeds/load-demo-club'
import { testDatabase } from './test-database'

/** Half of the spring term's weeks are over, in the holidays; the under-tens have fourteen practices before them. */
export const halfTerm = '2026-03-30'

/** The demo club as it stood then, into the test file's database, which must be empty still. */
export async function loadDemoAtHalfTerm(): Promise<void> {
  const owner = openDatabase(testDatabase().ownerUrl, { connections: 1 })
  try {
    await loadDemoAt(owner, halfTerm)
  } finally {
    await closeDatabase(owner)
  }
}
