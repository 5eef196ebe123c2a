import { describe, expect, it } from 'vitest'
import { matchesPlayed } from '#family/matches-played'

const match = (of: { keeper?: number; back?: number; forward?: number; isStart?: boolean }) => {
  const { keeper = 0, back = 0, forward = 0, isStart = false } = of
  const lines = { keeper, back, middle: 0, forward }
  return { playedSeconds: keeper + back + forward, isStart, lines }
}

describe('a child’s matches for its family', () => {
  it('are those it was on the pitch in, its starts, and the lines it has really played in', () => {
    const figures = [match({ back: 900, isStart: true }), match({ keeper: 600, forward: 100 }), match({})]
    expect(matchesPlayed(figures)).toEqual({ matches: 2, starts: 1, lines: ['keeper', 'back'] })
  })

  it('are nothing to tell before it was on', () => {
    expect(matchesPlayed([])).toBeNull()
    expect(matchesPlayed([match({})])).toBeNull()
  })
})
