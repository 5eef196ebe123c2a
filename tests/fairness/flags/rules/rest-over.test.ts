import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/rest-over'
import { aFigure, aStanding } from '../../../support/account-builder'
import { judgeRule, wordsOf } from '../../../support/judge-rule'

const rest = (seconds: number, fairSeconds: number) =>
  aStanding({ roles: { rest: aFigure({ seconds, fairSeconds }) } })

describe('much waiting', () => {
  it('is waiting beyond the tolerance, never too little of it', () => {
    expect(judgeRule(rule, rest(1601, 1000))).toMatchObject([{ gapSeconds: 601, size: 601 }])
    expect(judgeRule(rule, rest(1600, 1000))).toEqual([])
    expect(judgeRule(rule, rest(0, 5000))).toEqual([])
  })

  it('is called waiting', () => {
    expect(wordsOf(rule, judgeRule(rule, rest(1900, 1000))[0])).toBe(
      '15 min more waiting than an even share; up to 10 min is about even.',
    )
  })
})
