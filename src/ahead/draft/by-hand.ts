import type { AheadDraft } from '#ahead/draft/ahead-draft'
import { holdOne } from '#ahead/draft/hold-practices'
import { chosenOffer } from '#ahead/plan'
import type { AheadProblem, Offer } from '#ahead/problem'
import type { AheadRequest } from '#ahead/request'

type At = { readonly draft: AheadDraft; readonly practice: number }

/** Themes that a practice can be about, as places in the list, in its order. */
export function offeredThemes(problem: AheadProblem, practice: number): readonly number[] {
  const offers = problem.practices[practice]?.offers ?? []
  return [...new Set(offers.map(({ theme }) => theme))].sort((one, other) => one - other)
}

/** The coach wants another theme in a practice: it is held there, with whichever design serves it best. */
export function changeTheme(
  request: AheadRequest,
  { draft, practice, theme }: At & { readonly theme: number },
): AheadRequest {
  const [own, wanted] = [draft.asked.practices[practice], draft.asked.themes[theme]]
  return own && wanted ? holdOne(request, own.id, { themeId: wanted.id, designId: null }) : request
}

/** What is planned for a practice stays there. */
export function holdPractice(request: AheadRequest, { draft, practice }: At): AheadRequest {
  return holdOffer(request, { draft, practice, offer: chosenIn(draft, practice) })
}

export function freePractice(request: AheadRequest, { draft, practice }: At): AheadRequest {
  const own = draft.asked.practices[practice]
  return own ? holdOne(request, own.id, null) : request
}

/** What is planned for two practices is exchanged, and held in both; a design that cannot be played there is left open. */
export function exchangeWith(
  request: AheadRequest,
  { draft, practice, other }: At & { readonly other: number },
): AheadRequest {
  const [here, there] = [chosenIn(draft, practice), chosenIn(draft, other)]
  const once = holdOffer(request, { draft, practice: other, offer: here })
  return holdOffer(once, { draft, practice, offer: there })
}

function chosenIn({ asked, best }: AheadDraft, practice: number): Offer | null {
  return best ? chosenOffer(asked, best.plan.choices, practice) : null
}

function holdOffer(
  request: AheadRequest,
  { draft: { asked }, practice, offer }: At & { readonly offer: Offer | null },
): AheadRequest {
  const own = asked.practices[practice]
  const theme = asked.themes[offer?.theme ?? -1]
  const design = asked.designs[offer?.design ?? -1]
  if (!own || !offer || !theme || !design) return request
  const canBePlayed = own.offers.some((one) => one.theme === offer.theme && one.design === offer.design)
  return holdOne(request, own.id, { themeId: theme.id, designId: canBePlayed ? design.id : null })
}
