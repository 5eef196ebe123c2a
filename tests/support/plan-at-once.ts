import { draftOf, planOfDraft } from '#lineup/draft/line-up-draft'
import type { MatchPlan, MatchPlanRequest } from '#lineup/match-plan'

/** The plan that a page has as soon as it is opened; a request without one is no request of these tests. */
export function planAtOnce(
  request: MatchPlanRequest,
  nameOf: (id: string) => string = (id) => id,
): MatchPlan {
  const plan = planOfDraft(draftOf(request), nameOf)
  if (!plan) throw new Error('no line-up for this request')
  return plan
}
