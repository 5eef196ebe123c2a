import { choicesOfPlan } from '#ahead/draft/choices-of-plan'
import { firmHolds } from '#ahead/draft/firm-holds'
import { type Hold, holdPractices } from '#ahead/draft/hold-practices'
import { planAnew, planAtOnce, problemOfChoices } from '#ahead/draft/plan-at-once'
import type { AheadChoices } from '#ahead/plan'
import { problemOfAhead } from '#ahead/problem-of-request'
import type { AheadRequest } from '#ahead/request'
import type { TermPlan } from '#ahead/term-plan'
import type { Day } from '#common/time'

/** What a page begins with. */
export type FirstAhead = {
  /** Null: no plan that keeps the rules was found. */
  readonly choices: AheadChoices | null
  /** Firm practices of the saved plan that this one keeps. */
  readonly firm: ReadonlyMap<string, Hold>
  /** It is the saved plan as it was saved. */
  readonly isAsSaved: boolean
}

/**
 * The saved plan while the book says nothing new; else the better of it and a plan at once, which leaves what was firm as
 * it is, or, where that cannot be kept, any. `asOf`: the last day that is written.
 */
export function firstAhead(
  request: AheadRequest,
  { stored, asOf }: { readonly stored: TermPlan | null; readonly asOf: Day | null },
): FirstAhead {
  const problem = problemOfAhead(request)
  const firm = firmHolds(problem, stored)
  const planned = stored ? choicesOfPlan(problem, stored.practices) : null
  const before = planned?.every((choice) => choice >= 0) ? planned : null
  if (stored?.asOf === asOf && before && problemOfChoices(problem, before))
    return { choices: before, firm, isAsSaved: true }
  const kept = firm.size > 0 ? planAnew(problemOfAhead(holdPractices(request, firm)), before) : null
  if (kept) return { choices: kept.plan.choices, firm, isAsSaved: false }
  return { choices: planAtOnce(problem)?.plan.choices ?? null, firm: new Map(), isAsSaved: false }
}
