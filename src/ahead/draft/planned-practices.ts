import { type AheadChoices, chosenOffer } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import type { PlannedPractice } from '#ahead/term-plan'

/** Choices as they are kept. `isHeld` by the practices of the problem. */
export function plannedPractices(problem: AheadProblem, choices: AheadChoices): readonly PlannedPractice[] {
  return problem.practices.flatMap(({ id, held }, practice) => {
    const offer = chosenOffer(problem, choices, practice)
    const theme = problem.themes[offer?.theme ?? -1]
    const design = problem.designs[offer?.design ?? -1]
    return theme && design
      ? [{ sessionId: id, themeId: theme.id, designId: design.id, isHeld: held !== null }]
      : []
  })
}
