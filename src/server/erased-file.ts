import 'server-only'
import { open } from 'node:fs/promises'
import { join } from 'node:path'
import type { ErasureCause } from '#data/erasures'

const fileName = 'erased.jsonl'

/**
 * Notes outside of the database that a child was erased, so that an older backup put back later does not bring it back:
 * ids, the time and the cause, nothing else. On the disk when it returns. Without a data folder, as in a test of one
 * function, the database's own list is all there is.
 */
export async function noteErasure(erasure: {
  readonly clubId: string
  readonly playerId: string
  readonly erasedAt: Date
  readonly cause: ErasureCause
}): Promise<void> {
  const folder = process.env.TURNBOOK_DATA
  if (!folder) return
  const file = await open(join(folder, fileName), 'a', 0o600)
  try {
    await file.appendFile(`${JSON.stringify(erasure)}\n`)
    await file.sync()
  } finally {
    await file.close()
  }
}
