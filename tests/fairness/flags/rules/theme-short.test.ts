import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/theme-short'
import { aFigure, aStanding } from '../../../support/account-builder'
import { judgeRule, wordsOf } from '../../../support/judge-rule'

const standing = aStanding({
  themes: new Map([
    ['pressing', { ...aFigure({ seconds: 300, fairSeconds: 1000 }), turnsPresent: 12 }],
    ['passing', { ...aFigure({ seconds: 900, fairSeconds: 1000 }), turnsPresent: 12 }],
  ]),
})

describe('little of one theme', () => {
  it('finds each theme that is short by more than the tolerance', () => {
    expect(judgeRule(rule, standing)).toMatchObject([{ subject: 'pressing', gapSeconds: -700, size: 700 }])
  })

  it('calls the theme by its name', () => {
    expect(wordsOf(rule, judgeRule(rule, standing)[0])).toBe(
      '12 min less playing in “pressing” than an even share; up to 10 min is about even.',
    )
  })
})
