import { reachOf } from '#access/rules'
import type { ViewerRole } from '#access/viewer'

const rank: Readonly<Record<ViewerRole, number>> = {
  administrator: 4,
  headCoach: 3,
  coach: 2,
  helper: 1,
  guardian: 0,
}

/** Whether somebody may give a role to an adult, or take it from one: only who arranges people, and none above its own. */
export function mayGiveRole(giver: ViewerRole, role: ViewerRole): boolean {
  return reachOf.managePeople[giver] === 'club' && rank[role] <= rank[giver]
}
