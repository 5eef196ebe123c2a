import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/keep-short'
import { aFigure, aStanding } from '../../../support/account-builder'
import { judgeRule } from '../../../support/judge-rule'

const short = aStanding({ roles: { keep: aFigure({ seconds: 0, fairSeconds: 601 }) } })

describe('wants to keep, little time in goal', () => {
  it('is for who asked to keep only', () => {
    expect(judgeRule(rule, short, { player: { wantsToKeep: true } })).toMatchObject([{ gapSeconds: -601 }])
    expect(judgeRule(rule, short)).toEqual([])
  })

  it('is not for who may not keep, nor within the tolerance', () => {
    expect(judgeRule(rule, short, { player: { wantsToKeep: true, keeps: false } })).toEqual([])
    const within = aStanding({ roles: { keep: aFigure({ seconds: 1, fairSeconds: 601 }) } })
    expect(judgeRule(rule, within, { player: { wantsToKeep: true } })).toEqual([])
  })
})
