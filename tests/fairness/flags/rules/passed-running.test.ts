import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/passed-running'
import { aStanding } from '../../../support/account-builder'
import { attended, judgeRule } from '../../../support/judge-rule'

const passing = (...turns: readonly number[]) =>
  aStanding({ attended: attended(...turns.map((passedTurns) => ({ passedTurns }))) })

describe('has passed several practices running', () => {
  it('takes three practices in a row up to the last', () => {
    expect(judgeRule(rule, passing(0, 1, 2, 1))).toMatchObject([{ size: 3, sessionIds: ['s1', 's2', 's3'] }])
    expect(judgeRule(rule, passing(1, 1))).toEqual([])
    expect(judgeRule(rule, passing(1, 1, 1, 0))).toEqual([])
    expect(judgeRule(rule, passing(1, 1, 0, 1, 1))).toEqual([])
  })

  it('is a quiet note', () => {
    expect(rule.isQuiet).toBe(true)
  })
})
