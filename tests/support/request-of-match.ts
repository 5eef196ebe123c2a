import type { MatchRequestJson } from '#exchange/match-request/match-request-shape'

/** Nine for seven a side, two halves of 20 minutes with changes every five. */
export function aRequestOfMatch(change: Partial<MatchRequestJson> = {}): MatchRequestJson {
  return {
    format: 'turnbook/match-request@1',
    periods: [1200, 1200],
    places: { keeper: 1, back: 2, middle: 3, forward: 1 },
    changeEvery: 300,
    players: Array.from({ length: 9 }, (_, index) => ({ id: `p${index + 1}` })),
    ...change,
  }
}

/** The same with one of its players otherwise. */
export function withPlayer(
  index: number,
  change: Partial<MatchRequestJson['players'][number]>,
  request = aRequestOfMatch(),
): MatchRequestJson {
  return {
    ...request,
    players: request.players.map((player, at) => (at === index ? { ...player, ...change } : player)),
  }
}
