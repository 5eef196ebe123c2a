import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/match-goal-over'
import { aFigure, aStanding } from '../../../support/account-builder'
import { judgeRule } from '../../../support/judge-rule'

const keep = (seconds: number) => aStanding({ roles: { keep: aFigure({ seconds, fairSeconds: 300 }) } })

describe('much time in goal in matches', () => {
  it('is goal beyond the tolerance, from the first match on', () => {
    expect(judgeRule(rule, keep(901), { scope: 'match' })).toMatchObject([{ gapSeconds: 601 }])
    expect(judgeRule(rule, keep(900), { scope: 'match' })).toEqual([])
    expect(rule.speaksEarly).toBe(true)
  })
})
