import { leastLetGo, mostSingly } from '#exchange/least-let-go'
import { lineUpProblemOf } from '#exchange/match-request/match-request'
import type { MatchRequestJson } from '#exchange/match-request/match-request-shape'
import { checkLineUp } from '#lineup/check-line-up'
import { findLineUpClash } from '#lineup/find-line-up-clash'
import { layFirstLineUp } from '#lineup/first-line-up'
import { boardOf, planOfBoard } from '#lineup/line-up-board'
import type { LineUpProblem } from '#lineup/problem'
import { quickLineUp } from '#lineup/quick-line-up'
import { secondsThere } from '#lineup/seconds-there'
import { placesInAll } from '#match/format/places-in-all'

type Loosening = (json: MatchRequestJson) => MatchRequestJson

/**
 * The request with as little let go as makes a line-up possible; null where none was found. What is dearest is taken back
 * first, so that a held place or a rule of spells goes before a pair that is kept apart.
 */
export function nearestMatchRequest(
  json: MatchRequestJson,
  { seed, hasTime }: { readonly seed: number; readonly hasTime: () => boolean },
): MatchRequestJson | null {
  const works = (kept: readonly Loosening[]) => {
    const problem = lineUpProblemOf(loosened(json, kept))
    const isPlayed = problem.windows.every(({ places }) => placesInAll(places) > 0)
    return isPlayed && findLineUpClash(problem).length === 0 && hasLineUp(problem, seed)
  }
  const needed = leastLetGo(loosenings(json), { works, hasTime })
  return needed && loosened(json, needed)
}

/** Whether a line-up is found; one that is merely possible, before a good one. */
function hasLineUp(problem: LineUpProblem, seed: number): boolean {
  const board = boardOf(problem)
  if (layFirstLineUp(board) && checkLineUp(problem, planOfBoard(board)).length === 0) return true
  return quickLineUp(problem, { seed }) !== null
}

function loosened(json: MatchRequestJson, by: readonly Loosening[]): MatchRequestJson {
  return by.reduce((request, loosen) => loosen(request), json)
}

/** The dearest first. */
function loosenings(json: MatchRequestJson): readonly Loosening[] {
  const { rules = {}, places } = json
  const all: readonly (readonly [boolean, Loosening])[] = [
    ...ofList(json, 'apart'),
    [json.players.some(({ most }) => most != null), withPlayers(({ most: _, ...player }) => player)],
    [
      json.players.some(({ lines }) => Object.values(lines ?? {}).includes('notYet')),
      withPlayers(({ lines, ...player }) => ({ ...player, lines: withoutNotYet(lines) })),
    ],
    [
      (places.keeper ?? 0) > 0,
      (request) => ({
        ...request,
        places: { ...request.places, keeper: 0, back: (request.places.back ?? 0) + 1 },
      }),
    ],
    [!json.fewerWhereTooFew, (request) => ({ ...request, fewerWhereTooFew: true })],
    [true, withPossiblePromises],
    [rules.mayReturn === false, withRules({ mayReturn: true })],
    [rules.mostSubstitutions != null, withRules({ mostSubstitutions: null })],
    [rules.mostKeeperPeriods != null, withRules({ mostKeeperPeriods: null })],
    [rules.keeperForPeriod === true, withRules({ keeperForPeriod: false })],
    [rules.mostChanges != null, withRules({ mostChanges: null })],
    [(rules.leastSpell ?? 0) > 0, withRules({ leastSpell: 0 })],
    [rules.longestSpell != null, withRules({ longestSpell: null })],
    [rules.longestOff != null, withRules({ longestOff: null })],
    ...ofList(json, 'together'),
    ...ofList(json, 'fixed'),
  ]
  return all.flatMap(([isAsked, loosen]) => (isAsked ? [loosen] : []))
}

type Listed = 'apart' | 'together' | 'fixed'

/** Each of a list let go by itself, or all at once where they are many. */
function ofList(json: MatchRequestJson, list: Listed): readonly (readonly [boolean, Loosening])[] {
  const items: readonly unknown[] = json[list] ?? []
  if (items.length > mostSingly) return [[true, (request) => ({ ...request, [list]: [] })]]
  return items.map((item) => [
    true,
    (request) => ({ ...request, [list]: (request[list] ?? []).filter((other) => other !== item) }),
  ])
}

function withRules(rules: NonNullable<MatchRequestJson['rules']>): Loosening {
  return (request) => ({ ...request, rules: { ...request.rules, ...rules } })
}

type PlayerJson = MatchRequestJson['players'][number]

function withPlayers(change: (player: PlayerJson) => PlayerJson): Loosening {
  return (request) => ({ ...request, players: request.players.map(change) })
}

function withoutNotYet(lines: PlayerJson['lines']): PlayerJson['lines'] {
  return Object.fromEntries(Object.entries(lines ?? {}).filter(([, wish]) => wish !== 'notYet'))
}

/** Nobody is promised more than it is there for or may have. */
function withPossiblePromises(json: MatchRequestJson): MatchRequestJson {
  const { windows, players } = lineUpProblemOf(json)
  return {
    ...json,
    players: json.players.map((own, index) => {
      const player = players[index]
      if (!player) return own
      const there = secondsThere(player, windows)
      const most = Math.min(there, player.mostSeconds ?? there)
      return player.leastSeconds > most ? { ...own, least: most } : own
    }),
  }
}
