import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/match-minutes-short'
import { aFigure, aStanding } from '../../../support/account-builder'
import { judgeRule } from '../../../support/judge-rule'

const played = (attack: number, keep: number) =>
  aStanding({
    roles: {
      attack: aFigure({ seconds: attack, fairSeconds: 1000 }),
      defend: aFigure({ seconds: 0, fairSeconds: 1000 }),
      keep: aFigure({ seconds: keep, fairSeconds: 500 }),
      rest: aFigure({ seconds: 900, fairSeconds: 0 }),
    },
  })

describe('few minutes played in matches', () => {
  it('takes attack, defence and goal together', () => {
    expect(judgeRule(rule, played(1000, 899), { scope: 'match' })).toMatchObject([{ gapSeconds: -601 }])
    expect(judgeRule(rule, played(1000, 900), { scope: 'match' })).toEqual([])
  })

  it('takes the place of the flag on time off, which is the same time seen from the other side', () => {
    expect(rule.replaces).toEqual(['matchOffOver'])
  })
})
