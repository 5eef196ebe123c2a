import { describe, expect, it } from 'vitest'
import { keptUnaskedInMatch, keptUnaskedInPractice } from '#fairness/kept-unasked'

const able = new Set(['ann'])

describe('goal kept by who was asked not to', () => {
  it('is found in every turn of a practice', () => {
    const turn = (start: number, ...keepers: string[]) => ({
      start,
      end: start + 40,
      themeId: null,
      stations: keepers.map((playerId) => ({ attack: [], defend: [], keep: [playerId] })),
    })
    const turns = [turn(0, 'ann'), turn(40, 'ben', 'ann', 'cas'), turn(80)]
    expect(keptUnaskedInPractice({ turns }, { able })).toEqual([
      { turn: 1, playerId: 'ben' },
      { turn: 1, playerId: 'cas' },
    ])
  })

  it('is found in every span of a match, also when somebody else changes', () => {
    const match = {
      periods: [{ start: 0, end: 100 }],
      register: ['ben', 'cas'].map((playerId) => ({ playerId, from: 0, to: 100 })),
      spells: [
        { playerId: 'ben', line: 'keeper', start: 0, end: 100 },
        { playerId: 'cas', line: 'back', start: 40, end: 100 },
      ] as const,
    }
    expect(keptUnaskedInMatch(match, { able })).toEqual([
      { period: 0, span: { from: 0, to: 40 }, playerId: 'ben' },
      { period: 0, span: { from: 40, to: 100 }, playerId: 'ben' },
    ])
  })
})
