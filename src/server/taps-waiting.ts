import 'server-only'
import { listDeedsOn } from '#data/audit'
import type { ClubTx } from '#data/in-club'
import { countPitchEvents } from '#data/pitch-events'
import { writeFromPitchDeed } from '#server/tapped-writings'

/** How many taps of a practice or match are not in the book yet: all, or those that arrived after it was written. */
export async function countTapsWaiting(tx: ClubTx, sessionId: string): Promise<number> {
  const count = (await countPitchEvents(tx, [sessionId])).get(sessionId) ?? 0
  if (count === 0) return 0
  const [last] = await listDeedsOn(tx, { objectId: sessionId, actions: [writeFromPitchDeed] })
  return count - Number(last?.detail.upTo ?? 0)
}
