import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/keep-over'
import { aFigure, aStanding } from '../../../support/account-builder'
import { judgeRule } from '../../../support/judge-rule'

const keep = (seconds: number, fairSeconds: number) =>
  aStanding({ roles: { keep: aFigure({ seconds, fairSeconds }) } })

describe('much time in goal', () => {
  it('is goal beyond the tolerance, even for one who likes it', () => {
    expect(judgeRule(rule, keep(901, 300))).toMatchObject([{ gapSeconds: 601 }])
    expect(judgeRule(rule, keep(900, 300))).toEqual([])
    expect(judgeRule(rule, keep(901, 300), { player: { wantsToKeep: true } })).toHaveLength(1)
  })

  it('need not wait for four sessions', () => {
    expect(rule.speaksEarly).toBe(true)
  })
})
