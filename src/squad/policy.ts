import type { Day, Seconds } from '#common/time'

/** The club's fair-play rules. Settings of the club, not rules of any governing body. */
export type Policy = {
  /** A difference from the fair share up to the larger of the two is about even. */
  readonly toleranceSeconds: Seconds
  readonly toleranceShare: number
  /** How much of the time in the middle of a match counts as attack; the rest is defence. */
  readonly middleAttackShare: number
  /** Most turns in a row that a present player should wait. */
  readonly restLimitTurns: number
  /** Most of its playing and waiting time in a term that a player should be in goal. */
  readonly goalShareLimit: number
  /** Least part of the time available in a match that a player should play. */
  readonly leastMatchShare: number
  /** Least part of a squad's sessions that must be written before anything is said of it. */
  readonly writtenShareNeeded: number
  /** Written sessions before a flag may speak, goal-keeping and safety excepted. */
  readonly sessionsBeforeFlags: number
  /** Matches before attack and defence in matches may be flagged. */
  readonly matchesBeforeRoles: number
}

export const defaultPolicy: Policy = {
  toleranceSeconds: 600,
  toleranceShare: 0.15,
  middleAttackShare: 0.5,
  restLimitTurns: 2,
  goalShareLimit: 0.5,
  leastMatchShare: 0.5,
  writtenShareNeeded: 0.6,
  sessionsBeforeFlags: 4,
  matchesBeforeRoles: 4,
}

/** `ageLimit` null: for every squad without a version of its own. */
export type PolicyVersion = {
  readonly id: string
  readonly ageLimit: number | null
  readonly effectiveFrom: Day
  readonly policy: Policy
}

/** The version in force for an age band on a day: the newest of its own, else the newest of the club, else the defaults. */
export function policyInForce(
  versions: readonly PolicyVersion[],
  at: { readonly ageLimit: number; readonly day: Day },
): Policy {
  const begun = versions.filter((v) => v.effectiveFrom <= at.day)
  const newest = (ageLimit: number | null) =>
    begun
      .filter((v) => v.ageLimit === ageLimit)
      .reduce<PolicyVersion | null>(
        (best, v) => (best && best.effectiveFrom >= v.effectiveFrom ? best : v),
        null,
      )
  return (newest(at.ageLimit) ?? newest(null))?.policy ?? defaultPolicy
}
