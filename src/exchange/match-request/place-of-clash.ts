import type { JsonPath } from '#exchange/json-path'
import type { MatchRequest } from '#exchange/match-request/match-request'
import type { LineUpClash } from '#lineup/line-up-clash'

/** Which rule of a request a clash is of, and where that stands. */
export function placeOfClash(
  request: MatchRequest,
  clash: LineUpClash,
): { readonly rule: string; readonly path: JsonPath } {
  const { json } = request
  switch (clash.kind) {
    case 'places':
      return { rule: 'places', path: ['places'] }
    case 'keepers':
      return { rule: 'keepers', path: ['places', 'keeper'] }
    case 'lines':
      return { rule: 'lines', path: ['players'] }
    case 'longestSpell':
    case 'longestOff':
      return { rule: clash.kind, path: ['rules', clash.kind] }
    case 'spells':
      return { rule: 'leastSpell', path: ['rules', 'leastSpell'] }
    case 'keeperPeriods':
      return { rule: 'mostKeeperPeriods', path: ['rules', 'mostKeeperPeriods'] }
    case 'mostSeconds':
      return { rule: 'most', path: ['players'] }
    case 'leastAboveMost':
    case 'leastAboveThere':
      return { rule: 'least', path: placeOfLeast(request, clash.player) }
    case 'held':
    case 'tooSoon':
      return { rule: 'fixed', path: placeOfFixed(request, clash) }
    case 'heldTooMany':
      return {
        rule: 'fixed',
        path: placeOfFixed(request, { player: clash.players.at(-1) ?? -1, window: clash.window }),
      }
    case 'apartHeld':
    case 'apartFills':
      return { rule: 'apart', path: ['apart', clash.pair] }
    case 'apartTogether':
      return { rule: 'together', path: ['together', clash.together] }
    case 'rules':
      return { rule: 'rules', path: json.rules ? ['rules'] : [] }
  }
}

function placeOfLeast({ json }: MatchRequest, player: number): JsonPath {
  return json.players[player]?.least === undefined ? ['leastShare'] : ['players', player, 'least']
}

/** The last of the places held for a player that covers a window. */
function placeOfFixed(
  { json, problem }: MatchRequest,
  { player, window }: { readonly player: number; readonly window: number },
): JsonPath {
  const id = problem.players[player]?.id
  const at = problem.windows[window]
  const index = (json.fixed ?? []).findLastIndex(
    (held) => held.player === id && at !== undefined && held.from < at.end && at.start < held.to,
  )
  return index < 0 ? ['fixed'] : ['fixed', index]
}
