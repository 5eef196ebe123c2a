import { describe, expect, it } from 'vitest'
import { defaultMarks } from '#lineup/default-marks'

function marks(players: number, periods: number, minutes: number, aSide = 7, changesAtBreaksOnly = false) {
  const periodSeconds = Array.from({ length: periods }, () => minutes * 60)
  return defaultMarks({ periodSeconds, aSide, changesAtBreaksOnly }, players)
}

describe('marks to begin with', () => {
  it('let so many have exactly the same time, where a coarse grid does', () => {
    expect(marks(10, 2, 25)).toEqual([
      [300, 600, 900, 1200],
      [300, 600, 900, 1200],
    ])
    expect(marks(12, 4, 12, 9)).toEqual([[360], [360], [360], [360]])
    expect(marks(8, 4, 10)).toEqual([[300], [300], [300], [300]])
  })

  it('stand every four to eight minutes, and are few', () => {
    for (const players of [8, 9, 11, 13, 16])
      for (const [periods, minutes] of [
        [2, 20],
        [2, 30],
        [3, 15],
        [4, 15],
      ] as const) {
        const all = marks(players, periods, minutes)
        const windows = all.reduce((sum, own) => sum + own.length + 1, 0)
        expect(windows).toBeLessThanOrEqual(14)
        const edges = [0, ...(all[0] ?? []), minutes * 60]
        for (const [index, edge] of edges.slice(1).entries()) {
          expect(edge - (edges[index] ?? 0)).toBeGreaterThanOrEqual(240)
          expect(edge - (edges[index] ?? 0)).toBeLessThanOrEqual(480)
        }
      }
  })

  it('are none where changes wait for breaks, nobody is off, or games are short', () => {
    expect(marks(10, 2, 25, 7, true)).toEqual([[], []])
    expect(marks(7, 2, 25)).toEqual([[], []])
    expect(marks(6, 8, 8, 4)).toEqual(Array.from({ length: 8 }, () => []))
  })
})
