import { countWord } from '#common/count-word'
import { withDayFormat, withPlaces } from '#lineup/draft/change-match-request'
import type { LineUpChoice } from '#lineup/draft/line-up-choice'
import type { LineUpClash } from '#lineup/line-up-clash'
import type { MatchPlanRequest } from '#lineup/match-plan'
import { placeSeconds } from '#lineup/place-seconds'
import { placesFor } from '#lineup/places-for'
import { type LineUpProblem, noRules, windowSeconds } from '#lineup/problem'
import { formatLimits } from '#match/format/format-limits'

const [fewest] = formatLimits.aSide

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

/**
 * A smaller promise, one that the places have time for, down to a whole five per cent. None where the promise is not of a
 * part of the time, or small enough as it is.
 */
export function smallerPromise(
  request: MatchPlanRequest,
  { windows, players }: Pick<LineUpProblem, 'windows' | 'players'>,
): readonly LineUpChoice[] {
  const { leastShare } = request
  const room = placeSeconds(windows)
  const there = windows.reduce(
    (sum, window, index) =>
      sum + players.filter(({ isThere }) => isThere[index]).length * windowSeconds(window),
    0,
  )
  const percent = there > 0 ? Math.floor((room / there) * 20) * 5 : 0
  if (leastShare === null || percent <= 0 || percent >= Math.round(leastShare * 100)) return []
  return [
    {
      key: 'promise',
      words: `with a promise of ${percent} % of the time`,
      request: { ...request, leastShare: percent / 100 },
    },
  ]
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
