import { describe, expect, it } from 'vitest'
import { themeMeetings } from '#themes/theme-meetings'
import { themeAndAbove } from '#themes/theme-tree'

const themes = [
  { id: 'attacking', name: 'Attacking', parentId: null, order: 1 },
  { id: 'overlap', name: 'Overlap', parentId: 'attacking', order: 1 },
]
const part = (sessionId: string, themeId: string, turnsPresent: number, turnsPlayed: number) => ({
  sessionId,
  playerId: 'ana',
  themeId,
  turnsPresent,
  turnsPlayed,
  secondsPlayed: turnsPlayed * 45,
})

describe('a player’s themes', () => {
  it('are met by one turn', () => {
    expect(themeMeetings([part('s1', 'overlap', 3, 0), part('s2', 'overlap', 3, 2)], [])).toEqual([
      {
        playerId: 'ana',
        themeId: 'overlap',
        missed: null,
        practices: 2,
        practicesThere: 2,
        practicesPlayed: 1,
        turns: 2,
        seconds: 90,
      },
    ])
  })

  it('are missed because it wasn’t there, or didn’t get a turn', () => {
    expect(themeMeetings([part('s1', 'overlap', 0, 0)], [])[0]?.missed).toBe('away')
    expect(themeMeetings([part('s1', 'overlap', 0, 0), part('s2', 'overlap', 1, 0)], [])[0]?.missed).toBe(
      'noTurn',
    )
  })

  it('count for the themes they stand under, a practice once', () => {
    const meetings = themeMeetings([part('s1', 'overlap', 3, 1), part('s1', 'attacking', 2, 2)], themes)
    expect(meetings.map((m) => [m.themeId, m.practices, m.turns])).toEqual([
      ['overlap', 1, 1],
      ['attacking', 1, 3],
    ])
  })
})

describe('the tree of themes', () => {
  it('ends at the top, and does not run round in a circle', () => {
    expect(themeAndAbove(themes, 'overlap')).toEqual(['overlap', 'attacking'])
    expect(themeAndAbove([], 'unknown')).toEqual(['unknown'])
    const circle = [
      { id: 'a', name: 'A', parentId: 'b', order: 1 },
      { id: 'b', name: 'B', parentId: 'a', order: 1 },
    ]
    expect(themeAndAbove(circle, 'a')).toEqual(['a', 'b'])
  })
})
