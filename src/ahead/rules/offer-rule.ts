import { chosenOffer } from '#ahead/plan'
import type { AheadPractice, AheadProblem, Offer } from '#ahead/problem'
import { type AheadRule, type AheadRuleName, noLimits } from '#ahead/rule'
import { picksWhere } from '#ahead/themes-met'

/**
 * A rule that looks at an offer of a practice by itself, whatever is chosen elsewhere: `broken` names the themes on whose
 * account it may not be chosen; none: it may.
 */
export function offerRule(
  name: AheadRuleName,
  broken: (problem: AheadProblem, practice: AheadPractice, offer: Offer) => readonly number[],
): AheadRule {
  return {
    name,
    faults: (problem, choices) =>
      problem.practices.flatMap((own, practice) => {
        const offer = chosenOffer(problem, choices, practice)
        return offer ? broken(problem, own, offer).map((theme) => ({ rule: name, practice, theme })) : []
      }),
    limits: (problem) => ({
      ...noLimits,
      never: problem.practices.flatMap((own, practice) =>
        picksWhere(problem, practice, (offer) => broken(problem, own, offer).length > 0),
      ),
    }),
  }
}
