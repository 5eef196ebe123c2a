import { aheadRules } from '#ahead/ahead-rules'
import type { AheadChoices } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import type { AheadFault } from '#ahead/rule'

/** Every hard rule that choices break; none: they are a plan. It knows nothing of how they were found. */
export function checkAhead(problem: AheadProblem, choices: AheadChoices): readonly AheadFault[] {
  return aheadRules.flatMap(({ faults }) => faults(problem, choices))
}
