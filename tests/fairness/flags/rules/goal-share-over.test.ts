import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/goal-share-over'
import { aFigure, aStanding } from '../../../support/account-builder'
import { attended, judgeRule } from '../../../support/judge-rule'

const inGoal = (keepSeconds: number) =>
  aStanding({
    roles: { keep: aFigure({ seconds: keepSeconds, fairSeconds: keepSeconds }) },
    attended: attended({ day: '2026-08-20', keepSeconds: 1000 }, { day: '2026-09-02', keepSeconds }),
  })

describe('in goal for most of the term', () => {
  it('looks at the part of the time in the term, not at the gap', () => {
    expect(judgeRule(rule, inGoal(501))).toMatchObject([
      { gapSeconds: 1, toleranceSeconds: 0, gainPerTurn: 0.5 },
    ])
    expect(judgeRule(rule, inGoal(500))).toEqual([])
  })

  it("keeps to the policy's part", () => {
    expect(judgeRule(rule, inGoal(400), { policy: { goalShareLimit: 0.3 } })).toHaveLength(1)
  })

  it('says nothing outside every term, and need not wait for four sessions', () => {
    expect(judgeRule(rule, inGoal(1000), { isInTerm: false })).toEqual([])
    expect(rule.speaksEarly).toBe(true)
  })
})
