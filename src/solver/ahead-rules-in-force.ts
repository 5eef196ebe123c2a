import { aheadRules } from '#ahead/ahead-rules'
import type { AheadProblem } from '#ahead/problem'
import type { AheadRuleName } from '#ahead/rule'

/** The rules that tie anything: those that may have left no plan together. */
export function aheadRulesInForce(problem: AheadProblem): readonly AheadRuleName[] {
  return aheadRules.flatMap(({ name, limits }) => {
    const { never, atMostOne, needs, atLeastOne } = limits(problem)
    return never.length + atMostOne.length + needs.length + atLeastOne.length > 0 ? [name] : []
  })
}
