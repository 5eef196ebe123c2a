import { describe, expect, it } from 'vitest'
import { equalTimeChanges, equalTimeChangesOf, greatestCommon } from '#lineup/equal-time-changes'
import { fewestEqualChanges } from '../support/fewest-equal-changes'
import { smallLineUp } from '../support/line-up-builder'

describe('changes that exactly equal time takes', () => {
  // Outside check: every line-up of a small squad is tried, in windows fine enough for the filling that reaches the bound.
  it.each([
    [4, 2, 2],
    [4, 3, 2],
    [5, 3, 1],
    [5, 3, 2],
    [5, 4, 2],
    [6, 3, 1],
    [6, 4, 2],
    [6, 4, 3],
    [6, 5, 2],
    [7, 5, 2],
    [8, 7, 1],
  ])('are S − gcd(S, m·n), by brute force: %i players, %i on, %i periods', (players, onPitch, periods) => {
    const windows = players / greatestCommon(players, onPitch * periods)
    const fewest = fewestEqualChanges({ players, onPitch, periods, windows })
    expect(equalTimeChanges({ players, onPitch, periods })).toBe(fewest)
  })

  it('are never fewer in windows twice as fine', () => {
    expect(fewestEqualChanges({ players: 5, onPitch: 3, periods: 1, windows: 10 })).toBe(4)
    expect(fewestEqualChanges({ players: 4, onPitch: 3, periods: 2, windows: 4 })).toBe(2)
  })

  // Worked by hand: 10 − gcd(10, 14), 14 − gcd(14, 14), 12 − gcd(12, 36), 8 − gcd(8, 28).
  it('for squads of matches', () => {
    expect(equalTimeChanges({ players: 10, onPitch: 7, periods: 2 })).toBe(8)
    expect(equalTimeChanges({ players: 14, onPitch: 7, periods: 2 })).toBe(0)
    expect(equalTimeChanges({ players: 12, onPitch: 9, periods: 4 })).toBe(0)
    expect(equalTimeChanges({ players: 8, onPitch: 7, periods: 4 })).toBe(4)
  })

  it('are asked only where everyone is there and due the same', () => {
    expect(equalTimeChangesOf(smallLineUp())).toBe(2)
    expect(equalTimeChangesOf(smallLineUp({ players: [{ isThere: [false, true, true, true] }] }))).toBeNull()
    expect(
      equalTimeChangesOf(
        smallLineUp({ players: [{ owed: { playSeconds: 60, keepSeconds: 0, starts: 0 } }] }),
      ),
    ).toBeNull()
    expect(equalTimeChangesOf(smallLineUp({ players: [{ keeps: false }] }))).toBeNull()
    expect(equalTimeChangesOf(smallLineUp({ hasStart: false }))).toBeNull()
  })
})
