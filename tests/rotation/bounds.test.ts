import { describe, expect, it } from 'vitest'
import { mixingBound } from '#rotation/mixing-bound'
import { leastRestByCounting } from '#rotation/rest-bound'
import { situationBound } from '#rotation/situation-bound'
import { aRound, problemOf, smallRequest } from '../support/rotation-builder'

const players = (count: number) => Array.from({ length: count }, (_, index) => ({ id: `p${index + 1}` }))

describe('the least rest limit by counting', () => {
  // Sums on paper: in a run of limit + 1 turns there must be a place for everyone who is there throughout.
  it.each([
    { there: 6, stations: [{ attack: 2, defend: 1 }], keepersStay: false, least: 1 },
    { there: 7, stations: [{ attack: 2, defend: 1 }], keepersStay: false, least: 2 },
    { there: 10, stations: [{ attack: 2, defend: 1 }], keepersStay: false, least: 3 },
    // One keeper for all eight turns: two places a turn for the nine others.
    { there: 10, stations: [{ attack: 1, defend: 1, keep: 1 }], keepersStay: true, least: 4 },
    { there: 10, stations: [{ attack: 1, defend: 1, keep: 1 }], keepersStay: false, least: 3 },
  ])('$there players, keepers stay $keepersStay: $least', ({ there, stations, keepersStay, least }) => {
    const rounds = [aRound({ turns: 8, stations, keepersStay })]
    expect(leastRestByCounting(problemOf(smallRequest({ players: players(there), rounds })), 1)).toBe(least)
  })

  it('never goes below what is asked, and passes over those who come and go', () => {
    const rounds = [aRound({ turns: 4, stations: [{ attack: 1 }] })]
    expect(leastRestByCounting(problemOf(smallRequest({ rounds, players: players(2) })), 3)).toBe(3)
    const some = [{ id: 'p1' }, { id: 'p2', toTurn: 2 }, { id: 'p3', fromTurn: 3 }]
    expect(leastRestByCounting(problemOf(smallRequest({ rounds, players: some })), 1)).toBe(1)
  })
})

describe('the bound on mixing', () => {
  it('spreads the meetings evenly over the pairs', () => {
    // Eleven turns of two threes: 66 meetings over the 66 pairs of twelve: one each. From the trials of this engine's
    // authors no plan reaches 66 (each player's meetings are even, its partners eleven): a bound, not a promise.
    const rounds = [aRound({ turns: 11, stations: [{ attack: 3, defend: 3 }] })]
    expect(mixingBound(problemOf(smallRequest({ players: players(12), rounds })))).toBe(66)
  })

  it('counts no pair that can never meet', () => {
    const rounds = [aRound({ turns: 2, stations: [{ attack: 2 }] })]
    const request = smallRequest({ rounds, players: players(3) })
    expect(mixingBound(problemOf(request))).toBe(2)
    expect(
      mixingBound(
        problemOf({
          ...request,
          apart: [
            ['p1', 'p2'],
            ['p3', 'p1'],
          ],
        }),
      ),
    ).toBe(4)
  })
})

describe('the bound on situations', () => {
  it('is the sum of what is carried in, borne in equal parts', () => {
    // 30 − 10 = 20 s of outnumbering over four players: 4 × 5² = 100; level cancels out.
    const gaps = [{ outnumbering: 30, level: 5 }, { outnumbering: -10, level: -5 }, {}, {}]
    const request = smallRequest({ players: gaps.map((gap, index) => ({ id: `p${index}`, gap })) })
    expect(situationBound(problemOf(request))).toBe(100)
  })
})
