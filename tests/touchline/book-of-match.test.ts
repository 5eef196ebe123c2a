import { describe, expect, test } from 'vitest'
import { bookOfMatch, type MatchBook } from '#touchline/book-of-match'
import { foldMatch } from '#touchline/fold-match'
import type { MatchDeed } from '#touchline/match-deed'
import { faultsOfBook, secondsOfSpells } from '../support/match-spells'
import { planAtOnce } from '../support/plan-at-once'
import {
  firstOfTen as first,
  kickOff,
  kickOffMs,
  matchId,
  outOfGoal,
  packOfTen as pack,
  packOf,
  planOfTen as plan,
  requestOf,
  stateAt,
  taps,
} from '../support/tapped-match'
import { withAsPlanned } from '../support/with-as-planned'

const whistle = (period: number): MatchDeed => ({ kind: 'periodEnd', period })

function checked(book: MatchBook): MatchBook {
  expect(faultsOfBook(book)).toEqual([])
  return book
}

describe('bookOfMatch', () => {
  test('nothing was tapped, and it was all as planned', () => {
    const book = checked(bookOfMatch(pack, withAsPlanned(pack, [], kickOffMs)))
    expect(book.written).toBe('asPlanned')
    expect(book.periods).toEqual([
      { start: 0, end: 1500 },
      { start: 2100, end: 3600 },
    ])
    const planned = plan.spells.map(({ start, end, ...spell }) => {
      const later = start >= 1500 ? 600 : 0
      return { ...spell, start: start + later, end: end + later }
    })
    expect(new Set(book.spells.map((spell) => JSON.stringify(spell)))).toEqual(
      new Set(
        planned.map(({ playerId, line, start, end }) => JSON.stringify({ playerId, line, start, end })),
      ),
    )
    expect(book.register).toHaveLength(10)
  })
  test('the second half was not tapped: the rest as planned', () => {
    const begun = taps([0, first], [1510, whistle(0)])
    const book = checked(bookOfMatch(pack, withAsPlanned(pack, begun, kickOffMs)))
    expect(book.periods).toEqual([
      { start: 0, end: 1510 },
      { start: 2110, end: 3610 },
    ])
    expect(secondsOfSpells(book.spells)).toBe(7 * 3010)
  })
  test('a clock that stood is left out, and time beyond the whistle counts', () => {
    const events = taps(
      [0, first],
      [600, { kind: 'clockStops' }],
      [780, { kind: 'clockGoesOn' }],
      [1810, whistle(0)],
    )
    const book = checked(bookOfMatch(pack, events))
    // 1810 s on the wall, 180 of them stood still.
    expect(book.periods).toEqual([{ start: 0, end: 1630 }])
    expect(secondsOfSpells(book.spells)).toBe(7 * 1630)
    // A clock that stands moves the plan's changes.
    const due = Math.min(...plan.spells.map(({ end }) => end).filter((end) => end > 600 && end < 1500))
    expect(book.spells.some(({ start }) => start === due)).toBe(true)
  })
  test('a forgotten whistle: as long as planned, and it is said', () => {
    const begun = taps([0, first])
    const next = kickOff(stateAt(pack, taps([0, first], [1500, whistle(0)]), 1600))
    expect(bookOfMatch(pack, begun)).toMatchObject({ periods: [{ start: 0, end: 1500 }], endsAssumed: [0] })
    const twoHalves = taps([0, first], [2200, next], [3700, whistle(1)])
    expect(checked(bookOfMatch(pack, twoHalves))).toMatchObject({
      periods: [
        { start: 0, end: 1500 },
        { start: 2200, end: 3700 },
      ],
      endsAssumed: [0],
    })
  })
  test('a new face and a late one: there from when they came', () => {
    const guest = '00000000-0000-4000-8000-00000000aaaa'
    const gone: MatchDeed = { kind: 'register', playerId: matchId(9), state: 'gone' }
    const events = taps(
      [-60, gone],
      [0, kickOff(foldMatch(pack, taps([-60, gone])))],
      [700, { kind: 'guest', playerId: guest, name: 'Somebody New' }],
      [900, { kind: 'register', playerId: matchId(9), state: 'here' }],
      [1500, whistle(0)],
    )
    const book = checked(bookOfMatch(pack, events))
    const from = (id: string) => book.register.find(({ playerId }) => playerId === id)?.from
    expect([from(guest), from(matchId(9))]).toEqual([700, 900])
    expect(book.guests).toEqual([{ playerId: guest, name: 'Somebody New' }])
    expect(book.written).toBe('tapped')
  })
})

describe('what the book’s register has already', () => {
  const line = (index: number, from: number, state: 'out' | 'notPlaying') => ({
    ...{ playerId: matchId(index), from, to: 3600, state },
  })

  test('out from the twentieth minute on, typed: so it is, and what was played before stays', () => {
    const one = outOfGoal(foldMatch(pack, taps([0, first])))
    const index = plan.players.findIndex(({ playerId }) => playerId === one)
    const marked = { ...pack, register: [line(index, 200, 'out')] }
    const state = stateAt(marked, taps([0, first]), 260)
    expect(state.players.find(({ id }) => id === one)).toMatchObject({
      seconds: 200,
      isOut: true,
      line: null,
    })
    expect(stateAt(marked, taps([0, first]), 100).players.find(({ id }) => id === one)?.isOut).toBe(false)
  })

  test('not playing from the start, typed: no plan puts it on by itself', () => {
    const marked = { ...pack, register: [line(9, 0, 'notPlaying')] }
    expect(foldMatch(marked, []).nextKickOff?.on.map(({ playerId }) => playerId)).not.toContain(matchId(9))
  })

  test('written once, read again: the same book', () => {
    const sent = outOfGoal(foldMatch(pack, taps([0, first])))
    const events = taps(
      [0, first],
      [200, { kind: 'sentOff', playerId: sent, seconds: 300 }],
      [400, { kind: 'register', playerId: matchId(9), state: 'notPlaying' }],
      [1500, whistle(0)],
      [1501, { kind: 'fullTime' }],
    )
    const book = bookOfMatch(pack, events)
    expect(bookOfMatch({ ...pack, register: book.register }, events)).toEqual(book)
  })
})

test('who comes late and who leaves early by the plan is there for as long as planned, untapped', () => {
  const request = requestOf(10, { late: { 8: 1500 } })
  const early = {
    ...request,
    players: request.players.map((player, index) => (index === 9 ? { ...player, to: 1500 } : player)),
  }
  const planned = packOf(planAtOnce(early))
  const book = checked(bookOfMatch(planned, withAsPlanned(planned, [], kickOffMs)))
  const there = (index: number) =>
    book.register.filter(({ playerId }) => playerId === matchId(index)).map(({ from, to }) => [from, to])
  // The second half begins in the book at 1500 s of play and 600 s of break.
  expect([there(0), there(8), there(9)]).toEqual([[[0, 3600]], [[2100, 3600]], [[0, 2100]]])
  expect(secondsOfSpells(book.spells)).toBe(7 * 3000)
})
