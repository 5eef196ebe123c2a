import { describe, expect, it } from 'vitest'
import { fairSeconds, noSeconds } from '#rotation/fair-seconds'
import { closedShare, gentleGaps, sayPart } from '#rotation/gentle-gaps'
import type { RotationProblem } from '#rotation/problem'
import { randomRotation } from '../support/random-rotation'
import { aRound, problemOf, smallRequest } from '../support/rotation-builder'

describe('catching up gently', () => {
  it('asks for no less than half and no more than one and a half of an even share', () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const before = problemOf(randomRotation(seed))
      const { problem, later } = gentleGaps(before)
      const due = fairSeconds(problem)
      problem.players.forEach(({ gap }, player) => {
        for (const role of ['attack', 'defend', 'rest'] as const) {
          const fair = due[player]?.[role] ?? 0
          expect(fair - gap[role]).toBeGreaterThanOrEqual(0.5 * fair - 1e-9)
          expect(fair - gap[role]).toBeLessThanOrEqual(1.5 * fair + 1e-9)
        }
        const old = before.players[player]?.gap ?? noSeconds
        for (const role of ['attack', 'defend', 'keep', 'rest'] as const)
          expect(gap[role] + (later[player]?.[role] ?? 0)).toBeCloseTo(old[role], 6)
        expect(gap.keep).toBe(old.keep)
      })
    }
  })

  it('asks all others for only as much less as one who is far behind may get more', () => {
    // Five players, five turns of 40 s, one attacker: 40 s are due to each, so 20 s may be caught up; 5 s from each other.
    const players = ['a', 'b', 'c', 'd', 'e'].map((id) => ({ id, keeps: true }))
    const plain = problemOf(smallRequest({ players, rounds: [aRound({ turns: 5 })] }))
    const gaps = [-400, 100, 100, 100, 100]
    const problem: RotationProblem = {
      ...plain,
      players: plain.players.map((own, index) => {
        const attack = gaps[index] ?? 0
        return { ...own, gap: { ...noSeconds, attack, rest: -attack } }
      }),
    }
    const cut = gentleGaps(problem).problem.players.map(({ gap }) => gap)
    expect(cut.map(({ attack }) => attack)).toEqual([-20, 5, 5, 5, 5])
    expect(cut.map(({ rest }) => rest)).toEqual([20, -5, -5, -5, -5])
  })

  it('leaves a gap alone that one practice can close', () => {
    // Four players, three turns of 40 s, one attacker: 30 s are due to each, so 15 s may be caught up.
    const plain = problemOf(smallRequest({ rounds: [aRound({ turns: 3 })] }))
    const withGap = (attack: number): RotationProblem => ({
      ...plain,
      players: plain.players.map((own, index) =>
        index === 0 ? { ...own, gap: { ...noSeconds, attack, rest: -attack } } : own,
      ),
    })
    expect(gentleGaps(withGap(-10)).problem.players[0]?.gap).toMatchObject({ attack: -10, rest: 10 })
    expect(gentleGaps(withGap(-60)).problem.players[0]?.gap).toMatchObject({ attack: -15, rest: 15 })
    expect(gentleGaps(withGap(-60)).later[0]).toMatchObject({ attack: -45, rest: 45, defend: 0 })
  })
})

describe('what a practice closes of a gap', () => {
  it.each([
    { gap: -60, seconds: 50, fair: 30, share: 1 / 3, words: 'a third' },
    { gap: -60, seconds: 30, fair: 30, share: 0, words: 'nothing of it' },
    { gap: -60, seconds: 20, fair: 30, share: 0, words: 'nothing of it' },
    { gap: -60, seconds: 120, fair: 30, share: 1, words: 'all of it' },
    { gap: 40, seconds: 10, fair: 30, share: 1 / 2, words: 'half' },
  ])('$gap s and $seconds of $fair s: $words', ({ gap, seconds, fair, share, words }) => {
    const closed = closedShare(gap, { seconds, fair })
    expect(closed).toBeCloseTo(share, 9)
    expect(sayPart(closed ?? Number.NaN)).toBe(words)
  })

  it('is not spoken of where there was none', () => {
    expect(closedShare(0.4, { seconds: 10, fair: 30 })).toBeNull()
  })
})
