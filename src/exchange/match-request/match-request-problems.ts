import type { Problem } from '#common/problem'
import { type JsonPath, problemAt, quote } from '#exchange/json-path'
import type { MatchRequestJson } from '#exchange/match-request/match-request-shape'
import { searchProblems } from '#exchange/search-problems'
import {
  doubledIdProblems,
  type KnownIds,
  knownIdsOf,
  shareProblems,
  tooManyProblems,
  unknownIdProblems,
  wholeProblems,
} from '#exchange/value-problems'
import { fieldLines } from '#match/format/line-wish'
import { lines } from '#match/match'

/** What is more is a mistake, or meant to be a burden. */
const most = {
  players: 60,
  periods: 24,
  windows: 120,
  daySeconds: 24 * 3600,
  places: 60,
  listed: 2000,
} as const

/** Everything that is wrong with a request of the right shape, whatever the numbers there are. */
export function matchRequestProblems(json: MatchRequestJson): readonly Problem[] {
  const known = knownIdsOf('players', json.players)
  const whole = json.periods.reduce((sum, seconds) => sum + seconds, 0)
  return [
    ...periodProblems(json, whole),
    ...placesProblems(json.places),
    ...changeProblems(json),
    ...doubledIdProblems(
      json.players.map(({ id }, index) => ({ id, at: ['players', index, 'id'] })),
      'player',
    ),
    ...tooManyProblems(json.players.length, most.players, ['players']),
    ...json.players.flatMap((player, index) => playerProblems(player, whole, ['players', index])),
    ...shareProblems(json.leastShare, ['leastShare']),
    ...ruleProblems(json.rules ?? {}),
    ...(['apart', 'together', 'fixed'] as const).flatMap((list) =>
      tooManyProblems(json[list]?.length ?? 0, most.listed, [list]),
    ),
    ...(['apart', 'together'] as const).flatMap((list) =>
      (json[list] ?? []).flatMap((pair, index) => pairProblems(pair, known, [list, index])),
    ),
    ...(json.fixed ?? []).flatMap((fixed, index) => [
      ...unknownIdProblems(fixed.player, ['fixed', index, 'player'], known),
      ...spanProblems([fixed.from, fixed.to], whole, {
        from: ['fixed', index, 'from'],
        to: ['fixed', index, 'to'],
      }),
    ]),
    ...searchProblems(json),
  ]
}

type PlayerJson = MatchRequestJson['players'][number]

function periodProblems({ periods }: MatchRequestJson, whole: number): readonly Problem[] {
  const each = periods.flatMap((seconds, index) =>
    wholeProblems(seconds, 1, ['periods', index], 'a whole number of seconds'),
  )
  if (periods.length === 0) return [problemAt(['periods'], 'are none; one period or more would be right')]
  const tooMany = tooManyProblems(periods.length, most.periods, ['periods'])
  if (tooMany.length > 0 || whole <= most.daySeconds) return [...each, ...tooMany]
  return [...each, problemAt(['periods'], `last ${whole} seconds; a day or less in all would be right`)]
}

function placesProblems(places: MatchRequestJson['places']): readonly Problem[] {
  const each = lines.flatMap((line) =>
    wholeProblems(places[line], 0, ['places', line], 'a whole number of places'),
  )
  const inAll = lines.reduce((sum, line) => sum + (places[line] ?? 0), 0)
  if (each.length > 0) return each
  if (inAll === 0) return [problemAt(['places'], 'are none; a place or more would be right')]
  if (inAll > most.places) return tooManyProblems(inAll, most.places, ['places'])
  return (places.keeper ?? 0) > 1
    ? [problemAt(['places', 'keeper'], `is ${places.keeper}; 0 or 1 would be right`)]
    : []
}

/** Marks stand inside their periods, in order; they or an interval, never both. */
function changeProblems(json: MatchRequestJson): readonly Problem[] {
  const { changeEvery, marks, periods } = json
  if (marks !== undefined && changeEvery !== undefined)
    return [problemAt(['marks'], 'stand beside changeEvery; the one or the other would be right')]
  const interval = wholeProblems(changeEvery ?? undefined, 1, ['changeEvery'], 'a whole number of seconds')
  if (interval.length > 0) return interval
  if (marks !== undefined && marks.length !== periods.length)
    return [
      problemAt(
        ['marks'],
        `are of ${marks.length} periods; a list for each of ${periods.length} would be right`,
      ),
    ]
  const windows = changeEvery
    ? periods.reduce((sum, seconds) => sum + Math.ceil(seconds / changeEvery), 0)
    : (marks ?? []).reduce((sum, { length }) => sum + length + 1, 0)
  if (windows > most.windows)
    return [
      problemAt(
        [marks ? 'marks' : 'changeEvery'],
        `cuts the match into ${windows} parts; ${most.windows} or fewer would be right`,
      ),
    ]
  return (marks ?? []).flatMap((inside, period) =>
    inside.flatMap((mark, index) => {
      const at = ['marks', period, index]
      const before = inside[index - 1] ?? 0
      const end = periods[period] ?? 0
      const isRight = Number.isSafeInteger(mark) && before < mark && mark < end
      return isRight
        ? []
        : [problemAt(at, `is ${mark}; a whole second after ${before} and before ${end} would be right`)]
    }),
  )
}

function playerProblems(player: PlayerJson, whole: number, at: JsonPath): readonly Problem[] {
  const { least, most: allowed, met, gap, present } = player
  return [
    ...(present ?? []).flatMap((span, index) => {
      const where = [...at, 'present', index]
      const before = present?.[index - 1]
      return [
        ...spanProblems(span, whole, { from: [...where, 0], to: [...where, 1] }),
        ...(before && span[0] < before[1]
          ? [problemAt(where, `begins before ${before[1]}, where the one before ends; later would be right`)]
          : []),
      ]
    }),
    ...wholeProblems(least, 0, [...at, 'least'], 'a whole number of seconds'),
    ...wholeProblems(allowed ?? undefined, 0, [...at, 'most'], 'a whole number of seconds'),
    ...fieldLines.flatMap((line) =>
      isWithin(met?.[line], 0)
        ? []
        : [problemAt([...at, 'met', line], `is ${met?.[line]}; seconds, 0 or more, would be right`)],
    ),
    ...(['play', 'keep', 'starts'] as const).flatMap((what) =>
      isWithin(gap?.[what], -mostSeconds)
        ? []
        : [problemAt([...at, 'gap', what], `is ${gap?.[what]}; what a season can come to would be right`)],
    ),
  ]
}

/** More than a term of matches has; beyond it sums of squares are no longer exact. */
const mostSeconds = 1e7

function isWithin(value: number | undefined, least: number): boolean {
  return value === undefined || (value >= least && value <= mostSeconds)
}

/** From a second of the match to a later one. */
function spanProblems(
  [from, to]: readonly [number, number],
  whole: number,
  at: { readonly from: JsonPath; readonly to: JsonPath },
): readonly Problem[] {
  const isIn = (second: number) => Number.isSafeInteger(second) && second >= 0 && second <= whole
  const wrong = (path: JsonPath, second: number) =>
    isIn(second) ? [] : [problemAt(path, `is ${second}; a whole second from 0 to ${whole} would be right`)]
  const each = [...wrong(at.from, from), ...wrong(at.to, to)]
  return each.length === 0 && to <= from
    ? [problemAt(at.to, `is ${to}; a second after ${from} would be right`)]
    : each
}

function ruleProblems(rules: NonNullable<MatchRequestJson['rules']>): readonly Problem[] {
  const at = (rule: keyof typeof rules): JsonPath => ['rules', rule]
  const seconds = 'a whole number of seconds'
  return [
    ...wholeProblems(
      rules.mostKeeperPeriods ?? undefined,
      1,
      at('mostKeeperPeriods'),
      'a whole number of periods',
    ),
    ...wholeProblems(rules.leastSpell, 0, at('leastSpell'), seconds),
    ...wholeProblems(rules.longestSpell ?? undefined, 1, at('longestSpell'), seconds),
    ...wholeProblems(rules.longestOff ?? undefined, 1, at('longestOff'), seconds),
    ...wholeProblems(rules.mostChanges ?? undefined, 0, at('mostChanges'), 'a whole number'),
    ...wholeProblems(rules.mostSubstitutions ?? undefined, 0, at('mostSubstitutions'), 'a whole number'),
  ]
}

function pairProblems(
  [one, other]: readonly [string, string],
  known: KnownIds,
  at: JsonPath,
): readonly Problem[] {
  return [
    ...unknownIdProblems(one, [...at, 0], known),
    ...unknownIdProblems(other, [...at, 1], known),
    ...(one === other
      ? [problemAt(at, `pairs ${quote(one)} with itself; two different players would be right`)]
      : []),
  ]
}
