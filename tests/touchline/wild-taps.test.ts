import { expect, test } from 'vitest'
import { bookOfMatch } from '#touchline/book-of-match'
import { foldMatch } from '#touchline/fold-match'
import { faultsOfBook, secondsOfPlayer, spellsAt } from '../support/match-spells'
import { planAtOnce } from '../support/plan-at-once'
import { packOf, planOfTen, requestOf } from '../support/tapped-match'
import { wildTaps } from '../support/wild-taps'

const planned = packOf(planOfTen, 2)
const packs = [planned, packOf(planAtOnce(requestOf(9, { late: { 8: 1500 } }))), { ...planned, plan: null }]
const stories = Array.from({ length: 45 }, (_, seed) => ({
  pack: packs[seed % packs.length] ?? planned,
  events: wildTaps(seed + 1),
}))

test('whatever is sent comes to a match that can be: as many on as there are places, one of them in goal', () => {
  let seconds = 0
  for (const { pack, events } of stories) {
    const book = bookOfMatch(pack, events)
    expect(faultsOfBook(book)).toEqual([])
    for (const { start, end } of book.periods) {
      seconds += end - start
      for (let second = start; second < end; second += 97) {
        const on = spellsAt(book.spells, second)
        expect(on.length).toBeLessThanOrEqual(7)
        expect(on.filter(({ line }) => line === 'keeper').length).toBeLessThanOrEqual(1)
      }
    }
  }
  // Some of it is really played.
  expect(seconds).toBeGreaterThan(3600)
})

test('the order in which it arrives changes nothing, and the book has what the phone shows', () => {
  for (const { pack, events } of stories) {
    const state = foldMatch(pack, events)
    expect(foldMatch(pack, [...events].reverse())).toEqual(state)
    if (state.period) continue
    const book = bookOfMatch(pack, events)
    for (const { id, seconds } of state.players) expect(secondsOfPlayer(book.spells, id)).toBe(seconds)
  }
})
