import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Day } from '#common/time'
import { listErasedIds } from '#data/erasures'
import type { ClubTx } from '#data/in-club'
import { listMembershipsOf } from '#data/memberships'
import { getPlayer, type RosterPlayer } from '#data/players'
import type { PlayerId } from '#squad/player'
import type { Membership, SquadId } from '#squad/squad'

export type SquadMember = { readonly squadId: SquadId; readonly playerId: PlayerId }

/**
 * A player of the squad, past or present, with its days in that squad, for whoever may change those.
 * @throws AppError `notAllowed`; `notFound` when it never was of the squad, or was erased.
 */
export async function openMember(
  tx: ClubTx,
  viewer: Viewer,
  { squadId, playerId }: SquadMember,
): Promise<{ readonly player: RosterPlayer; readonly memberships: readonly Membership[] }> {
  demand(viewer, 'changePlayer', { kind: 'squad', squadId })
  const memberships = (await listMembershipsOf(tx, playerId)).filter((one) => one.squadId === squadId)
  if (memberships.length === 0 || (await listErasedIds(tx)).has(playerId))
    throw new AppError('notFound', `no player ${playerId} in squad ${squadId}`)
  return { player: await getPlayer(tx, playerId), memberships }
}

/** The same for what goes with the player wherever it plays: for the coaches of the squads it is in today. */
export async function openPlayer(
  tx: ClubTx,
  viewer: Viewer,
  { today, ...at }: SquadMember & { readonly today: Day },
): Promise<RosterPlayer> {
  const { player } = await openMember(tx, viewer, at)
  const squadIds = squadsToday(await listMembershipsOf(tx, at.playerId), today)
  demand(viewer, 'changePlayer', { kind: 'player', playerId: at.playerId, squadIds })
  return player
}

/** The squads whose coaches answer for a player: those it is in or will be in, else all it ever was in. */
export function squadsToday(
  memberships: readonly { readonly squadId: SquadId; readonly lastDay: Day | null }[],
  today: Day,
): readonly SquadId[] {
  const held = memberships.filter(({ lastDay }) => lastDay === null || lastDay >= today)
  return [...new Set((held.length > 0 ? held : memberships).map(({ squadId }) => squadId))]
}
