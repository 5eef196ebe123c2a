import { describe, expect, it } from 'vitest'
import { rule } from '#fairness/flags/rules/kept-unwillingly'
import { aFigure, aStanding } from '../../../support/account-builder'
import { attended, judgeRule, wordsOf } from '../../../support/judge-rule'

/** Counted as able whenever it kept, so share and due of goal are the same. */
const kept = aStanding({
  roles: { keep: aFigure({ seconds: 120, fairSeconds: 120 }) },
  attended: attended({ keepSeconds: 60 }, {}, { keepSeconds: 60 }),
})

describe('in goal although marked not to', () => {
  it('counts every time, with a gap of nothing', () => {
    expect(judgeRule(rule, kept, { player: { keeps: false } })).toEqual([
      { subject: '', gapSeconds: 120, toleranceSeconds: 0, size: 2, sessionIds: ['s0', 's2'] },
    ])
  })

  it('is nothing for one who may keep, or for one never put in goal', () => {
    expect(judgeRule(rule, kept)).toEqual([])
    expect(judgeRule(rule, aStanding({ attended: attended({}) }), { player: { keeps: false } })).toEqual([])
  })

  it('counts only what was after the day on which the player was marked, and what was before the day of the opposite', () => {
    const from = (day: string, keeps: boolean) => [{ playerId: 'ana', day, keeps }]
    expect(
      judgeRule(rule, kept, { player: { keeps: false }, keepsChanges: from('2026-09-02', false) }),
    ).toEqual([{ subject: '', gapSeconds: 60, toleranceSeconds: 0, size: 1, sessionIds: ['s2'] }])
    expect(
      judgeRule(rule, kept, { player: { keeps: true }, keepsChanges: from('2026-09-02', true) }),
    ).toEqual([{ subject: '', gapSeconds: 60, toleranceSeconds: 0, size: 1, sessionIds: ['s0'] }])
    expect(
      judgeRule(rule, kept, { player: { keeps: false }, keepsChanges: from('2026-09-04', false) }),
    ).toEqual([])
  })

  it('need not wait for four sessions', () => {
    expect(rule.speaksEarly).toBe(true)
  })

  it('says how often', () => {
    expect(wordsOf(rule, judgeRule(rule, kept, { player: { keeps: false } })[0])).toBe(
      'Was put in goal twice, 2 min in all, although marked not to keep.',
    )
  })
})
