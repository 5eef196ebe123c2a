import { describe, expect, test } from 'vitest'
import { accountMatch } from '#fairness/account-match'
import { bookOfMatch } from '#touchline/book-of-match'
import { foldMatch } from '#touchline/fold-match'
import { pastFairness } from '#touchline/past-fairness'
import { randomMatch } from '../support/random-match'
import { packOfTen as pack, taps } from '../support/tapped-match'

describe('pastFairness', () => {
  test.each([1, 2, 3])('what a match left each due is what its account in the book says: seed %i', (seed) => {
    const events = taps(...randomMatch(pack, seed), [9000, { kind: 'fullTime' }])
    const state = foldMatch(pack, events)
    const { periods, register, spells } = bookOfMatch(pack, events)
    const account = accountMatch(
      {
        id: 'match',
        day: '2026-09-12',
        periods,
        register: register.filter(({ state: how }) => how === 'here'),
        spells,
      },
      {
        able: new Set(state.players.filter(({ keeps }) => keeps).map(({ id }) => id)),
        members: new Set(),
        middleAttackShare: 0.5,
        written: 'tapped',
      },
    )
    const due = pastFairness(state)
    for (const { id } of state.players) {
      const own = account.lines.filter(({ playerId, role }) => playerId === id && role !== 'rest')
      const play = own.reduce((sum, { fairSeconds }) => sum + fairSeconds, 0)
      const keep = own.reduce((sum, { role, fairSeconds }) => (role === 'keep' ? sum + fairSeconds : sum), 0)
      expect(due.get(id)?.play).toBeCloseTo(play, 6)
      expect(due.get(id)?.keep).toBeCloseTo(keep, 6)
    }
  })
})
