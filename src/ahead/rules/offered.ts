import { chosenOffer } from '#ahead/plan'
import { type AheadRule, noLimits } from '#ahead/rule'

/** Every practice has one of its offers; where there is none, there is no plan. */
export const offered: AheadRule = {
  name: 'offered',
  faults: (problem, choices) =>
    problem.practices.flatMap((_, practice) =>
      chosenOffer(problem, choices, practice) ? [] : [{ rule: 'offered', practice, theme: null }],
    ),
  limits: (problem) => ({
    ...noLimits,
    atLeastOne: problem.practices.flatMap(({ offers }) => (offers.length === 0 ? [[]] : [])),
  }),
}
