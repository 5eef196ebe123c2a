import { chosenOffer } from '#ahead/plan'
import type { AheadProblem, AheadTheme, Offer } from '#ahead/problem'
import { type AheadRule, type AheadRuleName, noLimits } from '#ahead/rule'
import { themeWithAbove } from '#ahead/theme-with-above'
import { picksWhere } from '#ahead/themes-met'

/** A rule of the week in which a practice of a theme, or of one under it, may be held. */
export function weekRule(
  name: AheadRuleName,
  isOutside: (theme: AheadTheme, week: number) => boolean,
): AheadRule {
  return {
    name,
    faults: (problem, choices) =>
      problem.practices.flatMap(({ week }, practice) => {
        const offer = chosenOffer(problem, choices, practice)
        return offer ? outside(problem, offer, week).map((theme) => ({ rule: name, practice, theme })) : []
      }),
    limits: (problem) => ({
      ...noLimits,
      never: problem.practices.flatMap(({ week }, practice) =>
        picksWhere(problem, practice, (offer) => outside(problem, offer, week).length > 0),
      ),
    }),
  }

  function outside({ themes }: AheadProblem, offer: Offer, week: number): readonly number[] {
    return themeWithAbove(themes, offer.theme).filter((index) => {
      const theme = themes[index]
      return theme !== undefined && isOutside(theme, week)
    })
  }
}
