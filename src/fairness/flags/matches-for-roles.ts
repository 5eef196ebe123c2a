import type { SessionKind } from '#fairness/standing'
import type { Policy } from '#squad/policy'

/**
 * A back is far from attack in any single match: attack and defence in matches are judged only over as many matches as
 * the policy asks for. `sessions`: those the player was there for. Always true of practices.
 */
export function hasMatchesForRoles(of: {
  readonly sessions: number
  readonly kind: SessionKind
  readonly policy: Policy
}): boolean {
  return of.kind === 'practice' || of.sessions >= of.policy.matchesBeforeRoles
}
