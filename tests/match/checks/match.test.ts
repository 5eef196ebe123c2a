import { describe, expect, it } from 'vitest'
import { checkMatch } from '#match/checks/check-match'
import { checkPeriodLength, checkPeriodOrder } from '#match/checks/periods'
import { checkSpellInsidePeriod } from '#match/checks/spell-inside-period'
import { checkSpellLength } from '#match/checks/spell-length'
import { checkSpellOverlap } from '#match/checks/spell-overlap'
import { checkSpellWhilePresent } from '#match/checks/spell-while-present'
import type { Spell } from '#match/match'

const spell = (playerId: string, start: number, end: number, line: Spell['line'] = 'back'): Spell => ({
  playerId,
  line,
  start,
  end,
})
const periods = [
  { start: 0, end: 900 },
  { start: 900, end: 1800 },
  { start: 2000, end: 2900 },
]

describe('the periods of a match', () => {
  it('end after they start', () => {
    expect(
      checkPeriodLength([
        { start: 0, end: 1 },
        { start: 5, end: 5 },
      ]),
    ).toEqual([{ rule: 'periodWithoutLength', period: 1 }])
  })

  it('may touch, and stand in order of time', () => {
    expect(checkPeriodOrder(periods)).toEqual([])
    expect(checkPeriodOrder([...periods, { start: 2899, end: 3000 }])).toEqual([
      { rule: 'periodOutOfOrder', period: 3, lastEnd: 2900 },
    ])
  })
})

describe('the spells of a match', () => {
  it('end after they start', () => {
    expect(checkSpellLength([spell('ann', 5, 4)])).toEqual([{ rule: 'spellWithoutLength', spell: 0 }])
  })

  it('lie inside one period, not over two that touch and not in a break', () => {
    const spells = [
      spell('ann', 0, 900),
      spell('ben', 800, 1000),
      spell('cas', 1800, 2000),
      spell('dee', 2000, 2900),
    ]
    expect(checkSpellInsidePeriod({ periods, spells })).toEqual([
      { rule: 'spellOutsidePeriod', spell: 1 },
      { rule: 'spellOutsidePeriod', spell: 2 },
    ])
  })

  it('of one player may touch but not overlap', () => {
    expect(checkSpellOverlap([spell('ann', 0, 400), spell('ann', 400, 900, 'forward')])).toEqual([])
    expect(checkSpellOverlap([spell('ann', 0, 401), spell('ben', 0, 900), spell('ann', 400, 900)])).toEqual([
      { rule: 'spellsOverlap', spell: 2, other: 0 },
    ])
  })

  it('are of players who are there for all of them', () => {
    const register = [
      { playerId: 'ann', from: 0, to: 500 },
      { playerId: 'ann', from: 500, to: 1800 },
    ]
    expect(
      checkSpellWhilePresent({ register, spells: [spell('ann', 400, 900), spell('ann', 1700, 1801)] }),
    ).toEqual([{ rule: 'spellWhileAway', spell: 1, playerId: 'ann' }])
  })

  it('are checked for all of it together with the periods', () => {
    const faults = checkMatch({ periods: [{ start: 9, end: 9 }], register: [], spells: [spell('ann', 3, 2)] })
    expect(faults.map((fault) => fault.rule)).toEqual([
      'periodWithoutLength',
      'spellWithoutLength',
      'spellOutsidePeriod',
      'spellWhileAway',
    ])
  })
})
