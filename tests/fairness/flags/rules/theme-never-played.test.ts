import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/theme-never-played'
import { aFigure, aStanding } from '../../../support/account-builder'
import { judgeRule, wordsOf } from '../../../support/judge-rule'

const theme = (turnsPresent: number, seconds: number) =>
  aStanding({
    themes: new Map([['pressing', { ...aFigure({ seconds, fairSeconds: 90, dueTurns: 1 }), turnsPresent }]]),
  })

describe('there for a theme, never played in it', () => {
  it('takes two turns of waiting, whatever the tolerance', () => {
    expect(judgeRule(rule, theme(2, 0))).toMatchObject([{ subject: 'pressing', gapSeconds: -90 }])
    expect(judgeRule(rule, theme(1, 0))).toEqual([])
  })

  it('is none after one turn played', () => {
    expect(judgeRule(rule, theme(9, 45))).toEqual([])
  })

  it('takes the place of the flag that says only little, and never speaks of the same number of turns', () => {
    expect(rule.replaces).toEqual(['themeShort'])
    expect(judgeRule(rule, theme(2, 0))[0]?.turnGap).toBeUndefined()
  })

  it('says so', () => {
    expect(wordsOf(rule, judgeRule(rule, theme(2, 0))[0])).toBe(
      'There when “pressing” was on, and waited every time.',
    )
  })
})
