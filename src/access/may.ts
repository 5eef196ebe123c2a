import { type Action, reachOf } from '#access/rules'
import type { Viewer } from '#access/viewer'
import type { PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'

/** What is asked for. Its club is the viewer's own: objects of another club cannot be loaded at all. */
export type AccessObject =
  | { readonly kind: 'club' }
  | { readonly kind: 'squad'; readonly squadId: SquadId }
  /** `squadIds`: the squads the player belongs to. */
  | { readonly kind: 'player'; readonly playerId: PlayerId; readonly squadIds: readonly SquadId[] }

/** Whether the viewer may do the action on the object, by the one table of `reachOf`. */
export function may(viewer: Viewer, action: Action, object: AccessObject): boolean {
  const reach = reachOf[action][viewer.role]
  if (reach === 'club') return true
  if (reach === 'ownSquads' && squadsOf(object).some((id) => viewer.squadIds.includes(id))) return true
  return mayAsGuardian(viewer, action, object)
}

/** Whether the viewer may as a guardian of the child, whatever its role: a coach may have a child in the club. */
export function mayAsGuardian(viewer: Viewer, action: Action, object: AccessObject): boolean {
  if (reachOf[action].guardian !== 'ownChildren') return false
  return object.kind === 'player' && viewer.playerIds.includes(object.playerId)
}

/** Whether any object at all is within reach: what decides that a door is shown. */
export function mayEver(viewer: Viewer, action: Action): boolean {
  const reach = reachOf[action][viewer.role]
  if (reach === 'club' || (reach === 'ownSquads' && viewer.squadIds.length > 0)) return true
  return reachOf[action].guardian === 'ownChildren' && viewer.playerIds.length > 0
}

function squadsOf(object: AccessObject): readonly SquadId[] {
  if (object.kind === 'squad') return [object.squadId]
  return object.kind === 'player' ? object.squadIds : []
}
