import { describe, expect, test } from 'vitest'
import { plainFormat } from '#lineup/draft/plain-format'
import type { MatchPlan } from '#lineup/match-plan'
import type { MatchFormat } from '#match/format/match-format'
import type { Line, Spell } from '#match/match'
import { bookOfMatch, type MatchBook } from '#touchline/book-of-match'
import { faultsOfBook, onByPlan, spellsAt } from '../support/match-spells'
import { planAtOnce } from '../support/plan-at-once'
import { kickOffMs, matchId, packOf, requestOf, type Tap, taps } from '../support/tapped-match'
import { withAsPlanned } from '../support/with-as-planned'

/**
 * One side of a grown-ups' match as it was played: who had which place from when to when by the match clock, which
 * begins the second half at 45:00. From the line-ups of match 15978 in the open data set statsbomb/open-data (GitHub),
 * read in a public copy of its table of positions; names are left out, players are numbered in its order. It does not
 * say how long was played beyond 45 minutes, so each half is 45:00 here. `null`: to the end.
 */
const record: readonly (readonly [player: number, place: number, from: string, to: string | null])[] = [
  [0, 2, '45:00', '46:57'],
  [0, 15, '46:57', '78:57'],
  [0, 21, '78:57', null],
  [1, 13, '56:12', '59:41'],
  [1, 10, '59:41', null],
  [2, 6, '00:00', null],
  [3, 3, '00:00', null],
  [4, 23, '00:00', null],
  [5, 10, '00:00', '59:41'],
  [5, 13, '59:41', null],
  [6, 21, '00:00', '76:33'],
  [7, 5, '00:00', null],
  [8, 17, '00:00', null],
  [9, 2, '00:00', '45:00'],
  [10, 13, '00:00', '46:57'],
  [10, 2, '46:57', null],
  [11, 15, '00:00', '46:57'],
  [11, 13, '46:57', '56:12'],
  [12, 21, '76:33', '78:57'],
  [12, 15, '78:57', null],
  [13, 1, '00:00', null],
]
const half = 45 * 60
const players = 14

function secondOf(clock: string): number {
  const [minutes = 0, seconds = 0] = clock.split(':').map(Number)
  return minutes * 60 + seconds
}

/** Places of the data set, numbered from goal to front: its table of positions, from memory. */
function lineOfPlace(place: number): Line {
  if (place === 1) return 'keeper'
  if (place <= 8) return 'back'
  return place === 17 || place >= 21 ? 'forward' : 'middle'
}

const spells = record.map(([player, place, from, to]) => ({
  playerId: matchId(player),
  line: lineOfPlace(place),
  start: secondOf(from),
  end: to === null ? 2 * half : secondOf(to),
}))

function secondsInLines(given: readonly Spell[]): ReadonlyMap<string, number> {
  const seconds = new Map<string, number>()
  for (const { playerId, line, start, end } of given) {
    const key = `${playerId} ${line}`
    seconds.set(key, (seconds.get(key) ?? 0) + end - start)
  }
  return seconds
}

const onAt = (second: number) => onByPlan({ spells }, second)

const elevens: MatchFormat = {
  ...plainFormat,
  aSide: 11,
  periodSeconds: [half, half],
  breakSeconds: 15 * 60,
  shapes: [{ name: '4-3-3', places: { keeper: 1, back: 4, middle: 3, forward: 3 } }],
}
const asked = planAtOnce(requestOf(players, { format: elevens }))
/** The match as if it had been planned: every spell cut at half-time. */
const plan: MatchPlan = {
  ...asked,
  spells: spells.flatMap((spell) =>
    [
      { ...spell, end: Math.min(spell.end, half) },
      { ...spell, start: Math.max(spell.start, half) },
    ].filter(({ start, end }) => start < end),
  ),
}

function expectAsRecorded(book: MatchBook): void {
  expect(faultsOfBook(book)).toEqual([])
  expect(secondsInLines(book.spells)).toEqual(secondsInLines(spells))
  const counts = new Set<number>()
  for (const { start, end } of book.periods)
    for (let second = start; second < end; second += 1) counts.add(spellsAt(book.spells, second).length)
  expect(counts).toEqual(new Set([11]))
}

describe('a match that was played', () => {
  test('tapped change by change, it has in the book what the record says, to the second', () => {
    const breakSeconds = 1043
    const changes = [...new Set(spells.map(({ start }) => start))].filter((at) => at > half)
    const given: readonly Tap[] = [
      [0, { kind: 'kickOff', period: 0, on: onAt(0) }],
      [half, { kind: 'periodEnd', period: 0 }],
      [half + breakSeconds, { kind: 'kickOff', period: 1, on: onAt(half) }],
      ...changes.map((at): Tap => [at + breakSeconds, { kind: 'places', on: onAt(at) }]),
      [2 * half + breakSeconds, { kind: 'periodEnd', period: 1 }],
    ]
    const book = bookOfMatch({ ...packOf(asked), plan: null }, taps(...given))
    expect(book.periods).toEqual([
      { start: 0, end: half },
      { start: half + breakSeconds, end: 2 * half + breakSeconds },
    ])
    expectAsRecorded(book)
  })

  test('planned so, and nothing tapped: the same', () => {
    const pack = packOf(plan)
    expectAsRecorded(bookOfMatch(pack, withAsPlanned(pack, [], kickOffMs)))
  })
})
