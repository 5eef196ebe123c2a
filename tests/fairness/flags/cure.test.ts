import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cureOf, cureSentence, fewestTurns } from '#fairness/flags/cure'
import type { Finding } from '#fairness/flags/flag-rule'
import { medianTurnSeconds } from '#fairness/median-turn'

const finding = (gapSeconds: number, more: Partial<Finding> = {}): Finding => ({
  subject: '',
  gapSeconds,
  toleranceSeconds: 600,
  size: Math.abs(gapSeconds),
  ...more,
})
const inPractice = { rule: {}, scope: 'practice', medianTurnSeconds: 60 } as const

describe('the smallest cure', () => {
  it('is the fewest turns of the median length that bring the gap inside', () => {
    // 781 − 600 = 181 s: four turns of 60 s.
    expect(cureOf(finding(-781, { turnGap: -5 }), inPractice)).toMatchObject({ kind: 'moreTurns', turns: 4 })
    expect(cureOf(finding(-780, { turnGap: -5 }), inPractice)).toMatchObject({ kind: 'moreTurns', turns: 3 })
    expect(cureOf(finding(781), inPractice)).toMatchObject({ kind: 'fewerTurns', turns: 4 })
  })

  it('brings the gap inside, and one turn fewer does not', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 20_000, noNaN: true }),
        fc.double({ min: 0, max: 2000, noNaN: true }),
        fc.double({ min: 1, max: 900, noNaN: true }),
        fc.constantFrom(1, 0.5, 0.3),
        fc.boolean(),
        (excess, toleranceSeconds, median, gainPerTurn, isShort) => {
          const size = toleranceSeconds + excess
          const gapSeconds = isShort ? -size : size
          const turns = fewestTurns({ gapSeconds, toleranceSeconds, gainPerTurn }, median)
          if (turns === null) throw new Error('no cure')
          const gapAfter = (count: number) => Math.max(0, size - count * median * gainPerTurn)
          expect(gapAfter(turns)).toBeLessThanOrEqual(toleranceSeconds + 1e-6)
          expect(gapAfter(turns - 1)).toBeGreaterThan(toleranceSeconds)
        },
      ),
    )
  })

  it('for goal, is turns out of goal that bring its part of the time down to the limit', () => {
    // 700 of 1000 s in goal, limit one half: gap 200. Seven turns of 60 s out of goal make 700 of 1420.
    const turns = fewestTurns({ gapSeconds: 200, toleranceSeconds: 0, gainPerTurn: 0.5 }, 60) ?? 0
    expect(turns).toBe(7)
    expect(700 / (1000 + turns * 60)).toBeLessThanOrEqual(0.5)
    expect(700 / (1000 + (turns - 1) * 60)).toBeGreaterThan(0.5)
  })

  it('is longer turns, not more of them, for who had its turns and is short in seconds', () => {
    const cure = cureOf(finding(-781, { turnGap: -0.9 }), inPractice)
    expect(cure).toMatchObject({ kind: 'longerTurns', turns: 4, seconds: 181 })
    expect(cureSentence(cure, undefined)).toBe(
      'Same number of turns, shorter ones: longer turns, not more of them (3 min in all).',
    )
    expect(cureOf(finding(-781, { turnGap: -1 }), inPractice).kind).toBe('moreTurns')
    // A whole turn, summed from thirds.
    expect(cureOf(finding(-781, { turnGap: 2 - (1 / 3 + 1 / 3 + 1 / 3 + 2 - 1e-12) }), inPractice).kind).toBe(
      'moreTurns',
    )
  })

  it('is minutes in matches', () => {
    expect(cureOf(finding(-900), { ...inPractice, scope: 'match' })).toEqual({
      kind: 'moreMatchTime',
      turns: null,
      seconds: 300,
    })
    expect(cureOf(finding(900), { ...inPractice, scope: 'match' })).toMatchObject({ kind: 'lessMatchTime' })
  })

  it('is the advice of the rule where it has one, and where no turn is known', () => {
    expect(cureOf(finding(-900), { ...inPractice, rule: { advice: 'Somebody else in goal.' } }).kind).toBe(
      'advice',
    )
    expect(cureOf(finding(-900), { ...inPractice, medianTurnSeconds: null }).kind).toBe('advice')
    expect(cureSentence({ kind: 'advice', turns: null, seconds: null }, 'Somebody else in goal.')).toBe(
      'Somebody else in goal.',
    )
  })

  it('is at least one turn', () => {
    expect(cureOf(finding(-90, { toleranceSeconds: 600 }), inPractice)).toMatchObject({ turns: 1 })
  })
})

describe('the median turn', () => {
  const turns = (...lengths: readonly number[]) =>
    lengths.map((length) => ({ start: 100, end: 100 + length }))

  it('is the middle length, the mean of two for an even count', () => {
    expect(medianTurnSeconds(turns(90, 30, 45))).toBe(45)
    expect(medianTurnSeconds(turns(90, 30, 45, 60))).toBe(52.5)
    expect(medianTurnSeconds([])).toBeNull()
  })
})
