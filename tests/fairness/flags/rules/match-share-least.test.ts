import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/match-share-least'
import { aStanding } from '../../../support/account-builder'
import { attended, judgeRule, wordsOf } from '../../../support/judge-rule'

const matches = aStanding({
  attended: attended(
    { liveSeconds: 3000, playedSeconds: 1499 },
    { liveSeconds: 3000, playedSeconds: 1500 },
    // Came for the second half and played a third of it.
    { liveSeconds: 1500, playedSeconds: 500 },
  ),
})

describe('less than the least part of a match', () => {
  it('counts the matches in which less than half of the time there was played', () => {
    expect(judgeRule(rule, matches, { scope: 'match' })).toEqual([
      { subject: '', gapSeconds: -251, toleranceSeconds: 0, size: 2, sessionIds: ['s0', 's2'] },
    ])
  })

  it("keeps to the policy's part", () => {
    expect(judgeRule(rule, matches, { scope: 'match', policy: { leastMatchShare: 0.3 } })).toEqual([])
  })

  it('says how often and how much', () => {
    expect(wordsOf(rule, judgeRule(rule, matches, { scope: 'match' })[0])).toBe(
      'Played less of a match than the club’s rule asks for, twice: 4 min in all.',
    )
  })
})
