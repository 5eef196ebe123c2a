import { describe, expect, test } from 'vitest'
import type { MatchFormat } from '#match/format/match-format'
import { bookOfMatch } from '#touchline/book-of-match'
import { foldMatch } from '#touchline/fold-match'
import type { MatchEvent } from '#touchline/match-pack'
import { faultsOfBook, secondsOfPlayer, spellsAt } from '../support/match-spells'
import { planAtOnce } from '../support/plan-at-once'
import { randomMatch } from '../support/random-match'
import { seededRandom } from '../support/seeded-random'
import { packOf, packOfTen, requestOf, sevens, taps } from '../support/tapped-match'

const fives: MatchFormat = {
  ...sevens,
  aSide: 5,
  periodSeconds: [600, 600, 600],
  breakSeconds: 120,
  shapes: [{ name: '1-2-1', places: { keeper: 1, back: 1, middle: 2, forward: 1 } }],
}
const packs = [
  packOfTen,
  packOf(planAtOnce(requestOf(8, { format: fives }))),
  packOf(planAtOnce(requestOf(9, { late: { 8: 1500 } }))),
]
const seeds = Array.from({ length: 4 }, (_, index) => index + 1)
const matches = packs.flatMap((pack, which) =>
  seeds.map((seed) => ({
    name: `pack ${which}, seed ${seed}`,
    pack,
    events: taps(...randomMatch(pack, seed)),
  })),
)

function undoOf({ id, at }: MatchEvent, number: number): MatchEvent {
  return {
    id: `01990000-0000-7000-9000-${String(number).padStart(12, '0')}`,
    deviceId: '00000000-0000-4000-9000-000000000002',
    at: at + 1,
    deed: { kind: 'undo', undoes: id, secondAnswer: true },
  }
}

describe('any match', () => {
  test('the same taps in any order, and twice, come to the same', () => {
    for (const { pack, events } of matches.slice(0, 20)) {
      const random = seededRandom(events.length)
      const shuffled = [...events, ...events.slice(0, 5)]
        .map((event) => ({ event, rank: random.whole(0, 1_000_000) }))
        .sort((one, other) => one.rank - other.rank)
        .map(({ event }) => event)
      expect(foldMatch(pack, shuffled)).toEqual(foldMatch(pack, events))
    }
  })

  test.each(matches)('the book can be written and balances: $name', ({ pack, events }) => {
    const book = bookOfMatch(pack, events)
    const here = book.register.filter(({ state }) => state === 'here')
    expect(faultsOfBook(book)).toEqual([])
    const state = foldMatch(pack, events)
    const places = pack.format.aSide
    for (const { start, end } of book.periods) {
      for (let second = start; second < end; second += 13) {
        const on = spellsAt(book.spells, second)
        expect(on.length).toBeLessThanOrEqual(places)
        expect(on.filter(({ line }) => line === 'keeper').length).toBeLessThanOrEqual(1)
      }
    }
    if (state.period) return
    for (const { id, seconds, secondsThere, secondsIn } of state.players) {
      const booked = secondsOfPlayer(book.spells, id)
      expect(booked).toBe(seconds)
      expect(Object.values(secondsIn).reduce((sum, one) => sum + one, 0)).toBe(seconds)
      const there = book.periods.reduce(
        (sum, period) =>
          sum +
          here
            .filter(({ playerId }) => playerId === id)
            .reduce(
              (part, { from, to }) =>
                part + Math.max(0, Math.min(to, period.end) - Math.max(from, period.start)),
              0,
            ),
        0,
      )
      expect(there).toBe(secondsThere)
      expect(booked).toBeLessThanOrEqual(there)
    }
  })

  test('what is undone was never tapped', () => {
    for (const { pack, events } of matches) {
      const random = seededRandom(events.length + 99)
      const gone = new Set(events.filter(() => random.whole(0, 3) === 0).map(({ id }) => id))
      const undone = events.filter(({ id }) => gone.has(id)).map(undoOf)
      const { undoable, redoable, setAside, at, ...state } = foldMatch(pack, [...events, ...undone])
      const {
        undoable: steps,
        redoable: none,
        setAside: aside,
        at: then,
        ...without
      } = foldMatch(
        pack,
        events.filter(({ id }) => !gone.has(id)),
        at,
      )
      expect(state).toEqual(without)
      expect(undoable.map(({ event }) => event.id)).toEqual(steps.map(({ event }) => event.id))
      expect([aside, then]).toEqual([setAside, at])
      expect(redoable).toHaveLength(gone.size)
      expect(none).toEqual([])
    }
  })

  test('where nobody is missing, all places are taken at every second, whatever is tapped of changes', () => {
    for (const pack of packs.slice(0, 2)) {
      for (const seed of seeds.slice(0, 2)) {
        const events = taps(
          ...randomMatch(pack, seed, { only: ['late', 'notNow', 'unknown', 'swap', 'stops', 'replan'] }),
        )
        const book = bookOfMatch(pack, events)
        for (const { start, end } of book.periods) {
          for (let second = start; second < end; second += 7) {
            expect(spellsAt(book.spells, second)).toHaveLength(pack.format.aSide)
          }
        }
      }
    }
  })
})
