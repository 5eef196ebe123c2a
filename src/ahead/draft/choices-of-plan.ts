import type { AheadChoices } from '#ahead/plan'
import type { AheadPractice, AheadProblem } from '#ahead/problem'
import type { PlannedPractice } from '#ahead/term-plan'

/** The place of what is planned for a practice among its offers; −1: it is not offered (any more). */
export function offerPlanned(
  problem: Pick<AheadProblem, 'themes' | 'designs'>,
  practice: Pick<AheadPractice, 'offers'>,
  planned: Pick<PlannedPractice, 'themeId' | 'designId'> | undefined,
): number {
  return planned === undefined
    ? -1
    : practice.offers.findIndex(
        ({ theme, design }) =>
          problem.themes[theme]?.id === planned.themeId && problem.designs[design]?.id === planned.designId,
      )
}

/** What a term's plan chooses for each practice of a problem; −1 where it says nothing that is offered. */
export function choicesOfPlan(problem: AheadProblem, planned: readonly PlannedPractice[]): AheadChoices {
  const of = new Map(planned.map((own) => [own.sessionId, own]))
  return problem.practices.map((practice) => offerPlanned(problem, practice, of.get(practice.id)))
}
