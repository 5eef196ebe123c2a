import type { AheadProblem, Offer } from '#ahead/problem'
import { offerRule } from '#ahead/rules/offer-rule'
import { offerMeets } from '#ahead/themes-met'

/** What the coach holds stays: theme and design where both are held, else its theme or one under it. */
export const held = offerRule('held', (problem, { held: asked }, offer) =>
  asked && !isAsHeld(problem, asked, offer) ? [asked.theme] : [],
)

function isAsHeld(
  problem: AheadProblem,
  { theme, design }: { readonly theme: number; readonly design: number | null },
  offer: Offer,
): boolean {
  return design === null
    ? offerMeets(problem, offer, theme)
    : offer.theme === theme && offer.design === design
}
