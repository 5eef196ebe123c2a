import 'server-only'
import type { Day } from '#common/time'
import type { ClubTx } from '#data/in-club'
import { listSquadIdsWith } from '#data/memberships'
import { rebuildSquad } from '#server/rebuild'
import { refreshFlags } from '#server/refresh-flags'
import type { PlayerId } from '#squad/player'
import type { Season, SquadId } from '#squad/squad'

type Import = {
  readonly squadId: SquadId
  /** First day that anything changed for: of a session, or of a membership. */
  readonly from: Day
  /** Who may keep goal from today on, or no longer: what everybody was due in their sessions changes. */
  readonly keepingChanged: readonly PlayerId[]
  readonly seasons: readonly Season[]
  readonly today: Day
  readonly now: Date
}

/** Brings accounts and flags up to what an import changed, inside its transaction. */
export async function afterImport(tx: ClubTx, at: Import): Promise<void> {
  const { squadId, today, keepingChanged } = at
  const from = keepingChanged.length > 0 && today < at.from ? today : at.from
  await rebuildSquad(tx, { squadId, from })
  await flagSeasons(tx, at, from)
  const others = new Set<SquadId>()
  for (const playerId of keepingChanged) {
    for (const other of await listSquadIdsWith(tx, { playerId, from: today })) others.add(other)
  }
  others.delete(squadId)
  for (const other of others) {
    await rebuildSquad(tx, { squadId: other, from: today })
    await flagSeasons(tx, { ...at, squadId: other }, today)
  }
}

async function flagSeasons(tx: ClubTx, at: Import, from: Day): Promise<void> {
  const begun = at.seasons.filter(({ firstDay, lastDay }) => lastDay >= from && firstDay <= at.today)
  for (const { id: seasonId } of begun) {
    await refreshFlags(tx, { squadId: at.squadId, seasonId, today: at.today, now: at.now })
  }
}
