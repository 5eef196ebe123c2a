import 'server-only'
import type { Day } from '#common/time'
import type { ClubTx } from '#data/in-club'
import { listSquadIdsWith } from '#data/memberships'
import { countAnew } from '#server/count-anew'
import type { PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'

type Import = {
  readonly squadId: SquadId
  /** First day that anything changed for: of a session, or of a membership. */
  readonly from: Day
  /** Who may keep goal from today on, or no longer: what everybody was due in their sessions changes. */
  readonly keepingChanged: readonly PlayerId[]
  readonly today: Day
  readonly now: Date
}

/** Brings accounts and flags up to what an import changed, inside its transaction. */
export async function afterImport(tx: ClubTx, at: Import): Promise<void> {
  const { squadId, today, now, keepingChanged } = at
  const from = keepingChanged.length > 0 && today < at.from ? today : at.from
  await countAnew(tx, { squadIds: [squadId], from, today, now })
  const others = new Set<SquadId>()
  for (const playerId of keepingChanged) {
    for (const other of await listSquadIdsWith(tx, { playerId, from: today })) others.add(other)
  }
  others.delete(squadId)
  await countAnew(tx, { squadIds: [...others], from: today, today, now })
}
