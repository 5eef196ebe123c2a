import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/attack-short'
import { aFigure, aStanding } from '../../../support/account-builder'
import { attended, judgeRule, wordsOf } from '../../../support/judge-rule'

const attack = (seconds: number, dueSeconds: number) =>
  aStanding({
    roles: { attack: aFigure({ seconds, fairSeconds: dueSeconds, dueSeconds, turns: 3, dueTurns: 9 }) },
  })

describe('little attacking', () => {
  it('is a gap beyond the seconds of the tolerance', () => {
    expect(judgeRule(rule, attack(1399, 2000))).toEqual([
      { subject: '', gapSeconds: -601, toleranceSeconds: 600, size: 601, turnGap: -6 },
    ])
    expect(judgeRule(rule, attack(1400, 2000))).toEqual([])
  })

  it('is a gap beyond its share of what was due, where that is more', () => {
    // 15 % of 10000 s are 1500 s.
    expect(judgeRule(rule, attack(8499, 10000))).toHaveLength(1)
    expect(judgeRule(rule, attack(8500, 10000))).toEqual([])
  })

  it('is never too much of it', () => {
    expect(judgeRule(rule, attack(9000, 2000))).toEqual([])
  })

  it('is judged by what was agreed', () => {
    const agreed = aStanding({
      roles: { attack: aFigure({ seconds: 1000, fairSeconds: 2000, dueSeconds: 1000 }) },
    })
    expect(judgeRule(rule, agreed)).toEqual([])
  })

  it('is judged from the first match on, but waits for enough of them to speak', () => {
    const match = { ...attack(0, 2000), attended: attended({}) }
    expect(judgeRule(rule, match, { scope: 'match' })).toHaveLength(1)
    expect(rule.waitsForMatches).toBe(true)
  })

  it('says so in minutes', () => {
    expect(wordsOf(rule, judgeRule(rule, attack(680, 2000))[0])).toBe(
      '22 min less attacking than an even share; up to 10 min is about even.',
    )
  })
})
