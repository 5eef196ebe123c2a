import { describe, expect, it } from 'vitest'
import { practiceSpans } from '#exposure/practice-spans'
import { longestRestRun } from '#exposure/rest-run'
import { turnsOfFreeGame } from '#practice/free-game'

const game = { start: 2400, minutes: 15, themeId: 't1', round: 'Free game' }

describe('a free game', () => {
  it('is two equal turns with the sides swapped and the keepers kept', () => {
    const [first, second] = turnsOfFreeGame({
      ...game,
      games: [{ attack: ['a', 'b', 'c'], defend: ['d', 'e'], keep: ['k'] }],
    })
    const both = { themeId: 't1', round: 'Free game' }
    // 15 minutes are 900 s, so each half has 450.
    expect(first).toEqual({
      ...both,
      start: 2400,
      end: 2850,
      stations: [{ attack: ['a', 'b', 'c'], defend: ['d', 'e'], keep: ['k'] }],
    })
    expect(second).toEqual({
      ...both,
      start: 2850,
      end: 3300,
      stations: [{ attack: ['d', 'e'], defend: ['a', 'b', 'c'], keep: ['k'] }],
      continuesWait: true,
    })
  })

  it('is one wait for whoever waits', () => {
    const games = [{ attack: ['a'], defend: ['d'], keep: [] }]
    const before = {
      start: 2000,
      end: 2040,
      themeId: null,
      stations: [{ attack: ['a'], defend: [], keep: [] }],
    }
    const turns = [before, ...turnsOfFreeGame({ ...game, games })]
    const spans = practiceSpans({ turns, register: [{ playerId: 'w', from: 0, to: 3600 }] })
    expect(longestRestRun(spans, 'w', { freeGameIsOneWait: true })).toBe(2)
    expect(longestRestRun(spans, 'w', { freeGameIsOneWait: false })).toBe(3)
  })

  it.each([0, -1, 2.5, Number.NaN])('of %s minutes is refused', (minutes) => {
    expect(() => turnsOfFreeGame({ ...game, minutes, games: [] })).toThrow('whole minutes')
  })
})
