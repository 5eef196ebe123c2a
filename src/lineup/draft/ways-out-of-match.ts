import { countWord } from '#common/count-word'
import { withPlaces } from '#lineup/draft/change-match-request'
import type { LineUpChoice } from '#lineup/draft/line-up-choice'
import { rulesLetGo } from '#lineup/draft/rules-let-go'
import type { LineUpClash } from '#lineup/line-up-clash'
import type { MatchPlanRequest } from '#lineup/match-plan'
import { placesFor } from '#lineup/places-for'
import { noRules } from '#lineup/problem'
import type { PlayerId } from '#squad/player'

/**
 * What could be asked instead where there is no line-up, or where it misses a promise: fewer places where too few are
 * there, nobody in goal where nobody may keep, then each rule let go by itself, then all that the coach set.
 */
export function waysOutOfMatch(
  request: MatchPlanRequest,
  of: { readonly clash: readonly LineUpClash[]; readonly nameOf: (player: PlayerId) => string },
): readonly LineUpChoice[] {
  const letGo = rulesLetGo(request, of.nameOf)
  const all: LineUpChoice = {
    key: 'all',
    words: 'with none of the rules of this match',
    request: {
      ...request,
      rules: {
        ...noRules,
        mayReturn: request.rules.mayReturn,
        mostSubstitutions: request.rules.mostSubstitutions,
      },
      locks: [],
    },
  }
  return [
    ...of.clash.flatMap((clash) => placesInstead(request, clash)),
    ...letGo,
    ...(letGo.length > 1 ? [all] : []),
  ]
}

function placesInstead(request: MatchPlanRequest, clash: LineUpClash): readonly LineUpChoice[] {
  const { places } = request
  if (clash.kind === 'places') {
    const there = Math.max(0, clash.there)
    const isEnough = there >= 3
    return isEnough
      ? [
          {
            key: 'places',
            words: `with ${countWord(there)} a side`,
            request: withPlaces(request, placesFor(places, there)),
          },
        ]
      : []
  }
  if (clash.kind === 'keepers' && places.keeper > 0)
    return [
      {
        key: 'noKeeper',
        words: 'with nobody in goal, one more in the middle',
        request: withPlaces(request, { ...places, keeper: 0, middle: places.middle + 1 }),
      },
    ]
  return []
}
