import { inOneOrder } from '#common/in-one-order'
import { type LineUpGoal, lineUpGoals } from '#lineup/line-up'
import type { MatchPlan } from '#lineup/match-plan'

/** Whether two plans are the same to whoever plays them, and what is proven of the one is no more than of the other. */
export function isSameMatchPlan(own: MatchPlan, saved: MatchPlan): boolean {
  const played = ({ proof: _proof, mayMeet = [], isAfresh = false, ...rest }: MatchPlan) =>
    inOneOrder({ ...rest, mayMeet, isAfresh })
  const isBetterProven = (goal: LineUpGoal) =>
    own.proof.goals[goal].bound >
    saved.proof.goals[goal].bound + 1e-6 * Math.max(1, saved.proof.goals[goal].bound)
  return !lineUpGoals.some(isBetterProven) && played(own) === played(saved)
}
