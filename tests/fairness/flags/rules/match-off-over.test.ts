import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/match-off-over'
import { aFigure, aStanding } from '../../../support/account-builder'
import { judgeRule, wordsOf } from '../../../support/judge-rule'

const off = (seconds: number) => aStanding({ roles: { rest: aFigure({ seconds, fairSeconds: 300 }) } })

describe('much time off in matches', () => {
  it('is time off beyond the tolerance', () => {
    expect(judgeRule(rule, off(901), { scope: 'match' })).toMatchObject([{ gapSeconds: 601 }])
    expect(judgeRule(rule, off(900), { scope: 'match' })).toEqual([])
  })

  it('is called off, not waiting', () => {
    expect(wordsOf(rule, judgeRule(rule, off(1200), { scope: 'match' })[0])).toBe(
      '15 min more time off in matches than an even share; up to 10 min is about even.',
    )
  })
})
