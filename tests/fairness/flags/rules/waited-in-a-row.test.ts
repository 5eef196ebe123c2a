import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/waited-in-a-row'
import { aStanding } from '../../../support/account-builder'
import { attended, judgeRule, wordsOf } from '../../../support/judge-rule'

const waits = aStanding({
  attended: attended({ longestRestTurns: 2 }, { longestRestTurns: 3 }, { longestRestTurns: 5 }),
})

describe('waited too many turns in a row', () => {
  it('counts the practices beyond the limit', () => {
    expect(judgeRule(rule, waits)).toMatchObject([{ size: 2, sessionIds: ['s1', 's2'] }])
  })

  it("keeps to the policy's limit", () => {
    expect(judgeRule(rule, waits, { policy: { restLimitTurns: 5 } })).toEqual([])
  })

  it('says how often', () => {
    expect(wordsOf(rule, judgeRule(rule, waits)[0])).toBe(
      'Waited more turns in a row than the club’s rule allows, twice.',
    )
  })
})
