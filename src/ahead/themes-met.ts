import { type AheadChoices, chosenOffer } from '#ahead/plan'
import type { AheadProblem, MetPractice, Offer } from '#ahead/problem'
import type { Pick } from '#ahead/rule'
import { themeWithAbove } from '#ahead/theme-with-above'

/** Whether a practice of an offer is one of a theme: its own, or one that it stands under. */
export function offerMeets(problem: Themed, offer: Offer, theme: number): boolean {
  return themeWithAbove(problem.themes, offer.theme).includes(theme)
}

/** Whether a practice that was held was one of a theme, or of one under it. */
export function didMeet(problem: Themed, met: MetPractice, theme: number): boolean {
  return met.themes.some((own) => themeWithAbove(problem.themes, own).includes(theme))
}

/** Whether what is chosen for a practice meets a theme. */
export function choiceMeets(
  problem: AheadProblem,
  choices: AheadChoices,
  { practice, theme }: { readonly practice: number; readonly theme: number },
): boolean {
  const offer = chosenOffer(problem, choices, practice)
  return offer !== null && offerMeets(problem, offer, theme)
}

/** The offers of a practice of which something is true. */
export function picksWhere(
  problem: AheadProblem,
  practice: number,
  isMeant: (offer: Offer) => boolean,
): readonly Pick[] {
  const offers = problem.practices[practice]?.offers ?? []
  return offers.flatMap((own, offer) => (isMeant(own) ? [{ practice, offer }] : []))
}

/** The offers of a practice that meet a theme. */
export function picksOf(
  problem: AheadProblem,
  { practice, theme }: { readonly practice: number; readonly theme: number },
): readonly Pick[] {
  return picksWhere(problem, practice, (offer) => offerMeets(problem, offer, theme))
}

type Themed = { readonly themes: AheadProblem['themes'] }
