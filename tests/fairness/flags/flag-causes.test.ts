import { describe, expect, it } from 'vitest'
import { summedFigures } from '#fairness/book/summed-figures'
import { causesOfFlag, figureOfFlag, flagCauses } from '#fairness/flags/flag-causes'
import { flagRules } from '#fairness/flags/registry'
import { noFigure } from '#fairness/standing-figure'

const column = { role: 'attack', situation: null, line: null, themeId: null } as const
const figures = summedFigures([
  { ...noFigure, ...column, situation: 'level', themeId: 't1', seconds: 100 },
  { ...noFigure, ...column, situation: 'outnumbering', themeId: 't1', seconds: 20 },
  { ...noFigure, ...column, role: 'defend', situation: 'level', themeId: 't2', seconds: 3 },
  { ...noFigure, ...column, role: 'keep', themeId: 't1', seconds: 4000 },
  { ...noFigure, ...column, role: 'rest', themeId: 't1', seconds: 50_000 },
])

describe('causes of flags', () => {
  it('are the part that weighs most and what the flag is about', () => {
    const cause = { missed: -10, goalDuty: 5, whileHere: -30, differenceSeconds: -35 }
    expect(causesOfFlag({ group: 'attack', cause })).toEqual(['whileHere', 'attack'])
    expect(causesOfFlag({ group: 'goal', cause: null })).toEqual(['goal'])
    expect(causesOfFlag({ group: 'note', cause: null })).toEqual([])
  })

  it('hold every group that a rule of the book is of, notes excepted', () => {
    const groups = flagRules.map((rule) => rule.cureGroup).filter((group) => group !== 'note')
    expect(groups.filter((group) => !flagCauses.includes(group))).toEqual([])
  })

  it('find the figure a flag is about', () => {
    const seconds = (group: Parameters<typeof figureOfFlag>[1]['group'], subject = '') =>
      figureOfFlag(figures, { group, subject })?.seconds
    expect(seconds('attack')).toBe(120)
    expect(seconds('defend')).toBe(3)
    expect(seconds('goal')).toBe(4000)
    expect(seconds('waiting')).toBe(50_000)
    expect(seconds('situation', 'level')).toBe(103)
    // Waiting in a turn of a theme is not meeting it.
    expect(seconds('theme', 't1')).toBe(4120)
    expect(seconds('theme', 'never')).toBe(0)
    expect(seconds('match')).toBe(4123)
    expect(seconds('note')).toBeUndefined()
    expect(seconds('situation', 'toString')).toBeUndefined()
  })
})
