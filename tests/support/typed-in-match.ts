import type { ClubTx } from '#data/in-club'
import { getSession } from '#data/sessions'
import { loadMatch } from '#data/written-sessions'
import { recordMatch } from '#server/record-match'
import type { TestClub } from './test-club'

/** A match that somebody types in: one period of twenty minutes, all of these in the middle throughout. */
export async function typeMatchIn(
  tx: ClubTx,
  typed: {
    readonly sessionId: string
    readonly playerIds: readonly string[]
    readonly by: TestClub['coach']
  },
): Promise<void> {
  const { sessionId, playerIds, by } = typed
  const [start, end] = [0, 1200]
  await recordMatch(
    tx,
    {
      periods: [{ start, end }],
      register: playerIds.map((playerId) => ({ playerId, from: start, to: end, state: 'here' })),
      spells: playerIds.map((playerId) => ({ playerId, line: 'middle', start, end })),
      written: 'typedLater',
    },
    { session: await getSession(tx, sessionId), before: await loadMatch(tx, sessionId), by },
  )
}
