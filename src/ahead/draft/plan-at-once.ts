import { checkAhead } from '#ahead/check-ahead'
import { leansFor } from '#ahead/lean-to'
import type { AheadChoices, AheadPlan } from '#ahead/plan'
import { planValue } from '#ahead/plan-value'
import type { AheadProblem } from '#ahead/problem'
import { quickAhead } from '#ahead/quick-plan'

const seed = 1

/**
 * A plan at once. That a design rests is our own wish for variety, no rule of the programme: it gives way, practice by
 * practice, before there is no plan. Null: none that keeps the rules was found even then.
 */
export function planAtOnce(
  problem: AheadProblem,
): { readonly problem: AheadProblem; readonly plan: AheadPlan } | null {
  for (const own of lessRest(problem)) {
    const plan = quickAhead(own, { seed })
    if (plan) return { problem: own, plan }
  }
  return null
}

/** The problem with as much rest for designs as these choices leave; null: they break another rule. */
export function problemOfChoices(problem: AheadProblem, choices: AheadChoices): AheadProblem | null {
  return lessRest(problem).find((own) => checkAhead(own, choices).length === 0) ?? null
}

function lessRest(problem: AheadProblem): readonly AheadProblem[] {
  return Array.from({ length: problem.designRest + 1 }, (_, less) =>
    less === 0 ? problem : { ...problem, designRest: problem.designRest - less },
  )
}

/** The better of what was planned before, where that can still be kept, and a plan at once: what need not change stays. */
export function planAnew(
  problem: AheadProblem,
  before: AheadChoices | null,
): { readonly problem: AheadProblem; readonly plan: AheadPlan } | null {
  const made = planAtOnce(problem)
  const kept = before && problemOfChoices(problem, before)
  if (!before || !kept) return made
  const plan = { choices: before, leans: leansFor(kept, before) }
  const isKept = !made || planValue(problem, plan).all <= planValue(problem, made.plan).all + 1e-6
  return isKept ? { problem: kept, plan } : made
}
