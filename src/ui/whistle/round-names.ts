import type { PracticePlan } from '#planning/practice-plan'

/** What each round of a plan is called: "Round 2, Two against one"; without a title by its number alone. */
export function roundNames(plan: PracticePlan | null): readonly string[] {
  return (plan?.design.rounds ?? []).map(({ title }, index) =>
    title ? `round ${index + 1}, ${title}` : `round ${index + 1}`,
  )
}
