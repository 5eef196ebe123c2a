import { describe, expect, it } from 'vitest'
import { checkLineLength } from '#squad/checks/line-length'
import { checkLineOverlap } from '#squad/checks/line-overlap'

const line = (playerId: string, from: number, to: number) => ({ playerId, from, to })

describe('a register', () => {
  it('has lines that end after they begin', () => {
    expect(checkLineLength([line('ann', 0, 1), line('ann', 5, 5), line('ben', 9, 3)])).toEqual([
      { rule: 'lineWithoutLength', line: 1 },
      { rule: 'lineWithoutLength', line: 2 },
    ])
  })

  it('may have lines of one player that touch, and lines of two that overlap', () => {
    expect(checkLineOverlap([line('ann', 50, 90), line('ben', 0, 100), line('ann', 0, 50)])).toEqual([])
  })

  it('has no overlapping lines of one player, named by their place, also behind a longer one', () => {
    const register = [line('ann', 0, 100), line('ann', 10, 20), line('ben', 0, 9), line('ann', 30, 40)]
    expect(checkLineOverlap(register)).toEqual([
      { rule: 'linesOverlap', line: 1, other: 0 },
      { rule: 'linesOverlap', line: 3, other: 0 },
    ])
  })
})
