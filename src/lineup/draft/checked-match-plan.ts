import type { Proof } from '#common/proof'
import { accept, type Result, refuse } from '#common/result'
import { checkLineUp } from '#lineup/check-line-up'
import { isSameValue } from '#lineup/compare-line-ups'
import { withKnownProofs } from '#lineup/draft/known-proofs'
import { sayLineUpFault } from '#lineup/draft/say-line-up-fault'
import { type LineUpGoal, type LineUpPlan, lineUpGoals } from '#lineup/line-up'
import { lineUpValues } from '#lineup/line-up-values'
import type { MatchPlan } from '#lineup/match-plan'
import { matchPlanOf } from '#lineup/match-plan-of'
import { planOfSpells } from '#lineup/plan-of-spells'
import type { LineUpProblem } from '#lineup/problem'
import { problemOfMatch } from '#lineup/problem-of-match'
import { quickLineUp } from '#lineup/quick-line-up'
import { placesInAll } from '#match/format/places-in-all'
import type { PlayerId } from '#squad/player'

const otherPlaces =
  'The lines of this line-up have more or fewer places than the match has players a side. Plan it anew.'

type Proofs = Readonly<Record<LineUpGoal, Proof>>

const noTimetable =
  'The times of this line-up do not fit its periods and the times at which changes may be made. Plan it anew.'

/**
 * A plan that came from outside as it may be kept: every rule checked, its values and sentence worked out anew. Of what it
 * says of itself only bounds are taken over, and only as long as no line-up is known that is better than they allow.
 */
export function checkedMatchPlan(
  plan: MatchPlan,
  nameOf: (player: PlayerId) => string,
): Result<MatchPlan, string> {
  const { spells, proof, ...request } = plan
  if (placesInAll(request.places) !== request.format.aSide) return refuse(otherPlaces)
  const lineUp = planOfSpells(request, spells)
  if (!lineUp) return refuse(noTimetable)
  const problem = problemOfMatch(request)
  const faults = checkLineUp(problem, lineUp)
  if (faults.length > 0)
    return refuse(...new Set(faults.map((fault) => sayLineUpFault(problem, fault, nameOf))))
  const kept = withKnownProofs(problem, lineUp, believed(problem, lineUp, proof.goals))
  return accept(matchPlanOf(request, kept, nameOf))
}

/** What a plan claims, up to the first goal in which a line-up made at once beats its bound; from there on nothing. */
function believed(problem: LineUpProblem, lineUp: LineUpPlan, claimed: Proofs): Proofs {
  const quick = quickLineUp(problem, { seed: 1 })
  const own = lineUpValues(problem, lineUp)
  const other = quick && lineUpValues(problem, quick)
  const proofs = {} as Record<LineUpGoal, Proof>
  let isAlike = other !== null
  let isBelieved = true
  for (const goal of lineUpGoals) {
    const { bound } = claimed[goal]
    const isBeaten = isAlike && other !== null && other[goal] < bound && !isSameValue(other[goal], bound)
    isBelieved &&= isSameValue(claimed[goal].value, own[goal]) && !isBeaten
    proofs[goal] = isBelieved ? claimed[goal] : { value: own[goal], bound: 0, proven: false }
    isAlike &&= other !== null && isSameValue(other[goal], own[goal])
  }
  return proofs
}
