import { offerPlanned } from '#ahead/draft/choices-of-plan'
import type { Hold } from '#ahead/draft/hold-practices'
import type { AheadProblem } from '#ahead/problem'
import { firmPractices, type TermPlan } from '#ahead/term-plan'

/** What was firm when a plan was saved, lies ahead still and can still be played: a new plan leaves it as it is. */
export function firmHolds(problem: AheadProblem, stored: TermPlan | null): ReadonlyMap<string, Hold> {
  const firm = (stored?.practices ?? []).slice(0, firmPractices)
  const of = new Map(firm.map((own) => [own.sessionId, own]))
  return new Map(
    problem.practices.flatMap((practice) => {
      const own = of.get(practice.id)
      return own && offerPlanned(problem, practice, own) >= 0
        ? [[practice.id, { themeId: own.themeId, designId: own.designId }] as const]
        : []
    }),
  )
}
