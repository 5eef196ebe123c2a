import { chosenOffer } from '#ahead/plan'
import type { AheadPractice, AheadProblem, Offer } from '#ahead/problem'
import { type AheadRule, noLimits } from '#ahead/rule'
import { offerMeets, picksWhere } from '#ahead/themes-met'

/** What the coach holds stays: theme and design where both are held, else its theme or one under it. */
export const held: AheadRule = {
  name: 'held',
  faults: (problem, choices) =>
    problem.practices.flatMap((own, practice) => {
      const offer = chosenOffer(problem, choices, practice)
      return !offer || isAsHeld(problem, own, offer)
        ? []
        : [{ rule: 'held', practice, theme: own.held?.theme ?? null }]
    }),
  limits: (problem) => ({
    ...noLimits,
    never: problem.practices.flatMap((own, practice) =>
      picksWhere(problem, practice, (offer) => !isAsHeld(problem, own, offer)),
    ),
  }),
}

function isAsHeld(problem: AheadProblem, { held: asked }: AheadPractice, offer: Offer): boolean {
  if (!asked) return true
  if (asked.design !== null) return offer.theme === asked.theme && offer.design === asked.design
  return offerMeets(problem, offer, asked.theme)
}
