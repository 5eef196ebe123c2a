import type { AheadTheme } from '#ahead/problem'
import type { AheadRule, AheadRuleName } from '#ahead/rule'
import { offerRule } from '#ahead/rules/offer-rule'
import { themeWithAbove } from '#ahead/theme-with-above'

/** A rule of the week in which a practice of a theme, or of one under it, may be held. */
export function weekRule(
  name: AheadRuleName,
  isOutside: (theme: AheadTheme, week: number) => boolean,
): AheadRule {
  return offerRule(name, ({ themes }, { week }, offer) =>
    themeWithAbove(themes, offer.theme).filter((index) => {
      const theme = themes[index]
      return theme !== undefined && isOutside(theme, week)
    }),
  )
}
