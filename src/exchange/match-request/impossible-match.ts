import { formatPath } from '#exchange/json-path'
import type { MatchRequest } from '#exchange/match-request/match-request'
import { nearestMatchRequest } from '#exchange/match-request/nearest-match-request'
import { placeOfClash } from '#exchange/match-request/place-of-clash'
import { impossibleFormat } from '#exchange/rotation-json'
import type { LineUpClash } from '#lineup/line-up-clash'
import { sayLineUpClash } from '#lineup/say-line-up-clash'

/** Why there is no line-up for a request, what alone may be let go, and the nearest request for which there is one. */
export function impossibleMatch(
  request: MatchRequest,
  found: {
    readonly clash: readonly LineUpClash[]
    /** Ready for JSON. */
    readonly waysOut: readonly object[]
    readonly hasTime: () => boolean
  },
) {
  const { clash, waysOut, hasTime } = found
  const { problem, settings, json } = request
  return {
    format: impossibleFormat,
    requirements: clash.map((one) => {
      const { rule, path } = placeOfClash(request, one)
      const first = 'first' in one ? one.first : 'window' in one ? one.window : null
      const last = 'last' in one ? one.last : 'window' in one ? one.window : null
      return {
        rule,
        path: formatPath(path),
        from: first === null ? null : (problem.windows[first]?.start ?? null),
        to: last === null ? null : (problem.windows[last]?.end ?? null),
        why: sayLineUpClash(problem, one, (player) => player).message,
      }
    }),
    waysOut,
    nearest: nearestMatchRequest(json, { seed: settings.seed, hasTime }),
  }
}
