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
  if (reach === 'ownSquads') return squadsOf(object).some((id) => viewer.squadIds.includes(id))
  if (reach === 'ownChildren') return object.kind === 'player' && viewer.playerIds.includes(object.playerId)
  return false
}

/** Whether any object at all is within reach: what decides that a door is shown. */
export function mayEver(viewer: Viewer, action: Action): boolean {
  const reach = reachOf[action][viewer.role]
  if (reach === 'ownSquads') return viewer.squadIds.length > 0
  if (reach === 'ownChildren') return viewer.playerIds.length > 0
  return reach === 'club'
}

function squadsOf(object: AccessObject): readonly SquadId[] {
  if (object.kind === 'squad') return [object.squadId]
  return object.kind === 'player' ? object.squadIds : []
}
