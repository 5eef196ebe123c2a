import type { KindStanding, SessionKind } from '#fairness/standing'
import type { Policy } from '#squad/policy'

/**
 * A back is far from attack in any single match: attack and defence in matches are judged only over as many matches as
 * the policy asks for, those the player was there for. Always true of practices.
 */
export function hasMatchesForRoles(
  standing: Pick<KindStanding, 'attended'>,
  { policy, scope }: { readonly policy: Policy; readonly scope: SessionKind },
): boolean {
  return scope === 'practice' || standing.attended.length >= policy.matchesBeforeRoles
}
