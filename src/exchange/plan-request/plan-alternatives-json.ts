import type { OtherPlan } from '#ahead/draft/ahead-engine'
import { chosenOffer } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { proofOf } from '#common/proof'
import { proofJson } from '#exchange/proof-json'
import { quiet } from '#exchange/quiet'

/**
 * Plans nearly as good, each with another theme in a practice: what that costs, and all that it would choose. What no plan
 * beats, none with such a wish beats either: `bound` holds for them too.
 */
export function planAlternativesJson(
  problem: AheadProblem,
  alternatives: readonly OtherPlan[],
  { practice, bound }: { readonly practice: number; readonly bound: number },
) {
  return alternatives.map(({ solved: { plan, proof }, costs }) => {
    const chosen = problem.practices.map(({ id }, at) => {
      const offer = chosenOffer(problem, plan.choices, at)
      return {
        id,
        theme: problem.themes[offer?.theme ?? -1]?.id ?? '',
        design: problem.designs[offer?.design ?? -1]?.id ?? '',
      }
    })
    const own = chosen[practice]
    const name = problem.themes.find(({ id }) => id === own?.theme)?.name ?? ''
    return {
      practice: own?.id ?? '',
      theme: own?.theme ?? '',
      design: own?.design ?? '',
      costs: quiet(costs),
      value: proofJson(proofOf(proof.value, Math.max(bound, proof.bound))),
      practices: chosen,
      sentence: sayAlternative(name, costs),
    }
  })
}

function sayAlternative(theme: string, costs: number): string {
  const minutes = Math.round(costs)
  return minutes === 0
    ? `With “${theme}” instead the plan is as good in expectation.`
    : `With “${theme}” instead the plan is ${minutes} ${minutes === 1 ? 'minute' : 'minutes'} worse in expectation.`
}
