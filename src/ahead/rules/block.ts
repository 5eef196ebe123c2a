import { blockThemes } from '#ahead/kept-weeks'
import { chosenOffer } from '#ahead/plan'
import { type AheadRule, noLimits } from '#ahead/rule'
import { offerMeets, picksWhere } from '#ahead/themes-met'

/** In weeks kept for a theme only that theme and those under it are met. */
export const block: AheadRule = {
  name: 'block',
  faults: (problem, choices) =>
    problem.practices.flatMap(({ week }, practice) => {
      const offer = chosenOffer(problem, choices, practice)
      if (!offer) return []
      return blockThemes(problem, week)
        .filter((theme) => !offerMeets(problem, offer, theme))
        .map((theme) => ({ rule: 'block' as const, practice, theme }))
    }),
  limits: (problem) => ({
    ...noLimits,
    never: problem.practices.flatMap(({ week }, practice) => {
      const themes = blockThemes(problem, week)
      return picksWhere(problem, practice, (offer) =>
        themes.some((theme) => !offerMeets(problem, offer, theme)),
      )
    }),
  }),
}
