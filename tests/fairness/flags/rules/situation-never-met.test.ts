import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/situation-never-met'
import { aFigure, aStanding } from '../../../support/account-builder'
import { judgeRule, wordsOf } from '../../../support/judge-rule'

const outnumbering = (seconds: number, fairSeconds: number) =>
  aStanding({ situations: { outnumbering: aFigure({ seconds, fairSeconds }) } })

describe('a situation never met', () => {
  it('is one that was due by more than the tolerance', () => {
    expect(judgeRule(rule, outnumbering(0, 601))).toMatchObject([
      { subject: 'outnumbering', gapSeconds: -601 },
    ])
    expect(judgeRule(rule, outnumbering(0, 600))).toEqual([])
  })

  it('is none once it was met for a second', () => {
    expect(judgeRule(rule, outnumbering(1, 5000))).toEqual([])
  })

  it('takes the place of the flag that says only little', () => {
    expect(rule.replaces).toEqual(['situationShort'])
  })

  it('says what an even share would have been', () => {
    expect(wordsOf(rule, judgeRule(rule, outnumbering(0, 900))[0])).toBe(
      'Never had more of us; an even share would have been 15 min.',
    )
  })
})
