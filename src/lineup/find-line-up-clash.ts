import { clashOfHeldPlaces } from '#lineup/clash-of-held-places'
import { clashOfPlaces } from '#lineup/clash-of-places'
import { clashOfRules } from '#lineup/clash-of-rules'
import type { LineUpClash } from '#lineup/line-up-clash'
import type { LineUpProblem } from '#lineup/problem'

export type { LineUpClash } from '#lineup/line-up-clash'

/**
 * Why no line-up can be, as far as arithmetic tells, at once. None: there may be one; whether there is, a search says.
 * A promise that cannot be kept is no clash, unless a limit or an absence contradicts it outright.
 */
export function findLineUpClash(problem: LineUpProblem): readonly LineUpClash[] {
  const ofPlaces = clashOfPlaces(problem)
  return ofPlaces.length > 0 ? ofPlaces : [...clashOfHeldPlaces(problem), ...clashOfRules(problem)]
}
