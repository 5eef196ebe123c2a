import { shareADay } from '#common/dated'
import type { Day } from '#common/time'
import type { PlayerId } from '#squad/player'
import type { Membership } from '#squad/squad'

/** Whether a player was a member on any of the days, both included. */
export function isMemberBetween(
  memberships: readonly Membership[],
  at: { readonly playerId: PlayerId; readonly firstDay: Day; readonly lastDay: Day },
): boolean {
  return memberships.some((m) => m.playerId === at.playerId && shareADay(m, at))
}
