import { blockThemes } from '#ahead/kept-weeks'
import { offerRule } from '#ahead/rules/offer-rule'
import { offerMeets } from '#ahead/themes-met'

/** In weeks kept for a theme only that theme and those under it are met. */
export const block = offerRule('block', (problem, { week }, offer) =>
  blockThemes(problem, week).filter((theme) => !offerMeets(problem, offer, theme)),
)
