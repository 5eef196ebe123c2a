import { explainLineUp } from '#lineup/explain-line-up'
import type { LineUp } from '#lineup/line-up'
import type { MatchPlan, MatchPlanRequest } from '#lineup/match-plan'
import { problemOfMatch } from '#lineup/problem-of-match'
import { spellsOfLineUp } from '#lineup/spells-of-line-up'
import type { PlayerId } from '#squad/player'

/** The plan as it is stored and sent: the request, its line-up as spells, and what it is worth in words. */
export function matchPlanOf(
  request: MatchPlanRequest,
  lineUp: LineUp,
  nameOf: (player: PlayerId) => string,
): MatchPlan {
  const problem = problemOfMatch(request)
  return {
    ...request,
    spells: spellsOfLineUp(problem, lineUp.plan),
    proof: { sentence: explainLineUp(problem, lineUp, nameOf), goals: lineUp.proofs },
  }
}
