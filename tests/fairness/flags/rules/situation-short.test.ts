import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/situation-short'
import { aFigure, aStanding } from '../../../support/account-builder'
import { judgeRule, wordsOf } from '../../../support/judge-rule'

const standing = aStanding({
  situations: {
    outnumbering: aFigure({ seconds: 100, fairSeconds: 900 }),
    level: aFigure({ seconds: 300, fairSeconds: 900 }),
    outnumbered: aFigure({ seconds: 2000, fairSeconds: 900 }),
  },
})

describe('little of one situation', () => {
  it('finds each situation that is short by more than the tolerance, and no other', () => {
    expect(judgeRule(rule, standing).map((f) => [f.subject, f.gapSeconds])).toEqual([['outnumbering', -800]])
  })

  it('is helped by a turn in that situation, on either side', () => {
    const [finding] = judgeRule(rule, standing)
    expect(finding && rule.isHelpedBy?.({ role: 'defend', situation: 'outnumbering' }, finding)).toBe(true)
    expect(finding && rule.isHelpedBy?.({ role: 'attack', situation: 'level' }, finding)).toBe(false)
  })

  it('says it in the words of the pitch', () => {
    expect(wordsOf(rule, judgeRule(rule, standing)[0])).toBe(
      '13 min less time with more of us than an even share; up to 10 min is about even.',
    )
  })
})
