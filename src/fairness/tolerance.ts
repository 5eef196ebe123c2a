import type { Seconds } from '#common/time'
import type { Policy } from '#squad/policy'

/** The larger of the two tolerances of the policy: so many seconds, or such a part of the fair share. */
export function toleranceSeconds(
  policy: Pick<Policy, 'toleranceSeconds' | 'toleranceShare'>,
  fairSeconds: number,
): Seconds {
  return Math.max(policy.toleranceSeconds, policy.toleranceShare * fairSeconds)
}
