import { describe, expect, it } from 'vitest'
import type { JudgedFigure } from '#fairness/book/judged-figure'
import { matchColumns } from '#ui/matches/match-columns'
import { showRow } from '#ui/matches/shown-row'

describe('the columns of the grid', () => {
  it('are the matches, and after a day of several one for all of it', () => {
    const match = (id: string, day: string) => ({ id, day })
    const [a, b, c, d] = [
      match('a', '2026-09-05'),
      match('b', '2026-09-12'),
      match('c', '2026-09-12'),
      match('d', '2026-09-19'),
    ] as const
    expect(matchColumns([a, b, c, d])).toEqual([
      { of: 'match', match: a },
      { of: 'match', match: b },
      { of: 'match', match: c },
      { of: 'day', day: '2026-09-12', matches: [b, c] },
      { of: 'match', match: d },
    ])
    expect(matchColumns([])).toEqual([])
  })
})

describe('a player’s line in whole minutes', () => {
  it('adds up: lines to the time on the pitch, all to the time there', () => {
    // 5.5 min in each of two lines and 5.5 off are 16.5: as whole minutes 17, of which 11 or 12 on the pitch.
    const lines = { keeper: 0, back: 330, middle: 0, forward: 330 }
    const played = { seconds: 660, dueSeconds: 720, gapSeconds: -60 } as JudgedFigure
    const { played: shown, lineMinutes, offMinutes } = showRow({ lines, offSeconds: 330, played })
    expect(shown.minutes + offMinutes).toBe(17)
    expect(Object.values(lineMinutes).reduce((sum, minutes) => sum + minutes, 0)).toBe(shown.minutes)
    expect(shown.differenceMinutes).toBe(-1)
    expect(shown.minutes - shown.dueMinutes).toBe(shown.differenceMinutes)
  })
})
