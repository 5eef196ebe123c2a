import { describe, expect, it } from 'vitest'
import type { DesignRound } from '#practice/design'
import { pointsOf, sized, sizeWords, withoutSteppingOff } from '#ui/pitch/choice-size'
import { area } from '../../support/pitch-builder'

const had = (playerId: string, attack: number, defend = 0) => ({
  playerId,
  turns: { attack, defend, keep: 0, rest: 0 },
})

describe('a size that is chosen', () => {
  it('makes whoever has had most turns of the role step off, and of equals the last named', () => {
    const totals = [had('a', 3), had('b', 1), had('c', 1), had('d', 0, 2), had('e', 0, 2)]
    const { stations, stepsOff } = sized([area('abc/de/k')], { attack: 2, defend: 1, keep: 1 }, totals)
    expect(stations).toEqual([area('bc/d/k')])
    expect(stepsOff).toEqual(['a', 'e'])
  })

  it('holds in every area, and asks nobody for more than there are', () => {
    expect(sized([area('ab/c'), area('d/e')], { attack: 1, defend: 1, keep: 0 }, [])).toEqual({
      stations: [area('a/c'), area('d/e')],
      stepsOff: ['b'],
    })
  })

  it('lets nobody come on who steps off for it', () => {
    const on = ['a', 'b'].map((playerId) => ({ playerId, station: 0, role: 'attack' as const }))
    const changes = withoutSteppingOff({ on, off: ['z'] }, ['b', 'c'])
    expect(changes.on.map(({ playerId }) => playerId)).toEqual(['a'])
    expect(changes.off).toEqual(['z', 'c'])
  })

  it('is worth what it says to the attackers, and what the ending says to the defenders', () => {
    const round = {
      choice: {
        by: 'attack',
        sizes: [
          { shape: { attack: 2, defend: 1, keep: 0 }, points: 1 },
          { shape: { attack: 2, defend: 2, keep: 1 }, points: 3 },
        ],
      },
    } as unknown as DesignRound
    const goal = { id: 'goal', words: 'Goal', side: 'attack', points: 1 } as const
    const won = { id: 'won', words: 'Won', side: 'defend', points: 2 } as const
    expect([pointsOf(goal, round, 1), pointsOf(goal, round, null), pointsOf(won, round, 1)]).toEqual([
      3, 1, 2,
    ])
    expect(round.choice?.sizes.map(sizeWords)).toEqual([
      '2 against 1, 1 point',
      '2 against 2 and a keeper, 3 points',
    ])
  })
})
