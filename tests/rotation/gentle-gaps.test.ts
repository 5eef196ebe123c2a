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
        for (const role of ['attack', 'defend'] as const) {
          const fair = due[player]?.[role] ?? 0
          expect(fair - gap[role]).toBeGreaterThanOrEqual(0.5 * fair - 1e-9)
          expect(fair - gap[role]).toBeLessThanOrEqual(1.5 * fair + 1e-9)
        }
        const old = before.players[player]?.gap ?? noSeconds
        const sum = (own: typeof old) => own.attack + own.defend + own.keep + own.rest
        expect(sum(gap)).toBeCloseTo(sum(old), 6)
        expect(gap.attack + (later[player]?.attack ?? 0)).toBeCloseTo(old.attack, 6)
      })
    }
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
