import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/goal-share-over'
import { aFigure, aStanding } from '../../../support/account-builder'
import { attended, judgeRule, wordsOf } from '../../../support/judge-rule'

const inGoal = (keepSeconds: number) =>
  aStanding({
    roles: { keep: aFigure({ seconds: keepSeconds, fairSeconds: keepSeconds }) },
    attended: attended({ day: '2026-08-20', keepSeconds: 1000 }, { day: '2026-09-02', keepSeconds }),
  })

describe('in goal for most of the term', () => {
  it('looks at the part of the time in the term, not at the gap', () => {
    expect(judgeRule(rule, inGoal(501))).toMatchObject([
      { subject: 't1', gapSeconds: 1, toleranceSeconds: 0, gainPerTurn: 0.5 },
    ])
    expect(judgeRule(rule, inGoal(500))).toEqual([])
  })

  it('is about one term, and names it', () => {
    const [finding] = judgeRule(rule, inGoal(800))
    expect(wordsOf(rule, finding)).toBe('In goal for 5 min more in “t1” than the club’s rule allows.')
  })

  it("keeps to the policy's part", () => {
    expect(judgeRule(rule, inGoal(400), { policy: { goalShareLimit: 0.3 } })).toHaveLength(1)
  })

  it('says nothing outside every term, and need not wait for four sessions', () => {
    expect(judgeRule(rule, inGoal(1000), { isInTerm: false })).toEqual([])
    expect(rule.speaksEarly).toBe(true)
  })
})
