import { chosenOffer } from '#ahead/plan'
import type { AheadPractice, AheadProblem, Offer } from '#ahead/problem'
import { type AheadRule, noLimits } from '#ahead/rule'
import { offerMeets, picksWhere } from '#ahead/themes-met'

/** What the coach holds stays: its theme or one under it, and its design where one is held. */
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
  const isDesign = asked.design === null || asked.design === offer.design
  return isDesign && offerMeets(problem, offer, asked.theme)
}
