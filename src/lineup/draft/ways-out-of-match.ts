import { countWord } from '#common/count-word'
import { withDayFormat, withPlaces } from '#lineup/draft/change-match-request'
import type { LineUpChoice } from '#lineup/draft/line-up-choice'
import type { LineUpClash } from '#lineup/line-up-clash'
import type { MatchPlanRequest } from '#lineup/match-plan'
import { placesFor } from '#lineup/places-for'
import { noRules } from '#lineup/problem'

/** Fewest a side that a format can have. */
const fewest = 3

/** What could be asked of the match itself where too few are there, or nobody may keep goal; whatever the rules are. */
export function placesInstead(
  request: MatchPlanRequest,
  clashes: readonly LineUpClash[],
): readonly LineUpChoice[] {
  const { places } = request
  return clashes.flatMap((clash): readonly LineUpChoice[] => {
    if (clash.kind === 'places' && clash.there >= fewest)
      return [
        {
          key: `places ${clash.there}`,
          words: `with ${countWord(clash.there)} a side`,
          request: withPlaces(request, placesFor(places, clash.there)),
        },
      ]
    if (clash.kind === 'keepers' && places.keeper > 0)
      return [
        {
          key: 'noKeeper',
          words: 'with nobody in goal, one more in the middle',
          request: withPlaces(request, { ...places, keeper: 0, middle: places.middle + 1 }),
        },
      ]
    return []
  })
}

/** The match with none of the coach's own rules; those of the format stay. */
export function withoutOwnRules(request: MatchPlanRequest): LineUpChoice {
  const { mayReturn, mostSubstitutions } = request.rules
  const freed = request.format.changesAtBreaksOnly
    ? withDayFormat(request, { changesAtBreaksOnly: false })
    : request
  return {
    key: 'all',
    words: 'with none of the rules of this match',
    request: { ...freed, rules: { ...noRules, mayReturn, mostSubstitutions }, locks: [] },
  }
}
