import { describe, expect, it } from 'vitest'
import { aheadRules } from '#ahead/ahead-rules'
import type { AheadProblem, AheadTheme } from '#ahead/problem'
import type { AheadRule } from '#ahead/rule'
import { aheadRuleNames } from '#ahead/rule'
import { after } from '#ahead/rules/after'
import { block } from '#ahead/rules/block'
import { designRest } from '#ahead/rules/design-rest'
import { firstWeek } from '#ahead/rules/first-week'
import { held } from '#ahead/rules/held'
import { lastWeek } from '#ahead/rules/last-week'
import { leastWeeksBetween } from '#ahead/rules/least-weeks-between'
import { mostWeeksBetween } from '#ahead/rules/most-weeks-between'
import { offered } from '#ahead/rules/offered'
import { plainAhead } from '../../support/plain-ahead'

/** Places of the practices in which a rule is broken, for choices written as theme numbers: `0 1 1`. */
function broken(rule: AheadRule, problem: AheadProblem, choices: string): readonly number[] {
  return rule.faults(problem, choices.split(' ').map(Number)).map(({ practice }) => practice)
}

const week = (own: number, themes: readonly number[] = [], design: number | null = null) => ({
  day: '2026-01-05',
  week: own,
  themes,
  design,
})

describe('rules of the weeks ahead', () => {
  it('are all in the list, each once', () => {
    expect(aheadRules.map(({ name }) => name)).toEqual(aheadRuleNames)
  })

  it('offered: every practice has one of its offers', () => {
    const problem = plainAhead({ weeks: [1, 2], themes: [{}, {}] })
    expect(broken(offered, problem, '0 1')).toEqual([])
    expect(broken(offered, problem, '2 -1')).toEqual([0, 1])
    expect(broken(offered, problem, '0')).toEqual([1])
  })

  it('held: the theme that is held, or one under it, and the design', () => {
    const plain = plainAhead({ weeks: [1], themes: [{}, { parent: 0 }, {}], designs: 2 })
    const holding = (design: number | null): AheadProblem => ({
      ...plain,
      practices: plain.practices.map((own) => ({ ...own, held: { theme: 0, design } })),
    })
    expect([0, 1, 2, 3, 4].map((offer) => broken(held, holding(null), `${offer}`).length)).toEqual([
      0, 0, 0, 0, 1,
    ])
    expect([0, 1, 2, 3].map((offer) => broken(held, holding(1), `${offer}`).length)).toEqual([1, 0, 1, 1])
  })

  it('held: with a design the theme itself, not one under it', () => {
    const plain = plainAhead({ weeks: [1], themes: [{}, { parent: 0 }] })
    const problem: AheadProblem = {
      ...plain,
      practices: plain.practices.map((own) => ({
        ...own,
        offers: own.offers.map((offer) => ({ ...offer, design: 0 })),
        held: { theme: 0, design: 0 },
      })),
    }
    expect([broken(held, problem, '0'), broken(held, problem, '1')]).toEqual([[], [0]])
  })

  it('first and last week: of the theme, or of one that it stands under', () => {
    const themes: readonly Partial<AheadTheme>[] = [{ firstWeek: 2, lastWeek: 3 }, { parent: 0 }, {}]
    const problem = plainAhead({ weeks: [1, 2, 3, 4], themes })
    expect(broken(firstWeek, problem, '0 0 0 0')).toEqual([0])
    expect(broken(lastWeek, problem, '0 0 0 0')).toEqual([3])
    expect(broken(firstWeek, problem, '1 1 1 1')).toEqual([0])
    expect(broken(lastWeek, problem, '1 1 1 1')).toEqual([3])
    expect(broken(firstWeek, problem, '2 0 0 2')).toEqual([])
  })

  it('after: not before the other was met in an earlier practice, in the plan or in the record', () => {
    const problem = plainAhead({ weeks: [1, 2, 3], themes: [{}, { after: 0 }, { parent: 0 }] })
    expect(broken(after, problem, '1 0 1')).toEqual([0])
    expect(broken(after, problem, '0 1 1')).toEqual([])
    // What stands under the other counts as it.
    expect(broken(after, problem, '2 1 1')).toEqual([])
    expect(broken(after, { ...problem, met: [week(0, [2])] }, '1 0 1')).toEqual([])
  })

  it('least weeks between: 2 means not in the same week and not in the next', () => {
    const problem = plainAhead({ weeks: [1, 1, 2, 3], themes: [{ leastWeeksBetween: 2 }, {}] })
    expect(broken(leastWeeksBetween, problem, '0 0 1 1')).toEqual([1])
    expect(broken(leastWeeksBetween, problem, '0 1 0 1')).toEqual([2])
    expect(broken(leastWeeksBetween, problem, '0 1 1 0')).toEqual([])
    expect(broken(leastWeeksBetween, { ...problem, met: [week(0, [0])] }, '0 1 1 0')).toEqual([0])
    const free = plainAhead({ weeks: [1, 1], themes: [{ leastWeeksBetween: 1 }] })
    expect(broken(leastWeeksBetween, free, '0 0')).toEqual([])
  })

  it('least weeks between: never too soon in weeks that are kept for it', () => {
    const problem = plainAhead({
      weeks: [1, 2, 3, 4],
      themes: [{ leastWeeksBetween: 2 }, { parent: 0 }, {}],
      problem: { blocks: [{ theme: 1, firstWeek: 2, lastWeek: 3 }] },
    })
    expect(broken(leastWeeksBetween, problem, '0 1 1 2')).toEqual([])
    expect(broken(leastWeeksBetween, problem, '0 1 1 0')).toEqual([3])
  })

  it('most weeks between: back in time, where the practices to come reach that far', () => {
    const problem = plainAhead({ weeks: [1, 2, 3, 4], themes: [{ mostWeeksBetween: 2 }, {}] })
    expect(broken(mostWeeksBetween, problem, '0 1 1 1')).toEqual([0])
    expect(broken(mostWeeksBetween, problem, '0 1 0 1')).toEqual([])
    // Met in week 3 it is due by week 5, which no practice reaches.
    expect(broken(mostWeeksBetween, problem, '1 1 0 1')).toEqual([])
    expect(broken(mostWeeksBetween, problem, '1 1 1 1')).toEqual([])
    // Last met in week 0 it is due by week 2.
    expect(broken(mostWeeksBetween, { ...problem, met: [week(0, [0])] }, '1 1 1 1')).toEqual([1])
  })

  it('most weeks between: not asked where its weeks or a block leave no room', () => {
    const themes: readonly Partial<AheadTheme>[] = [{ mostWeeksBetween: 2, lastWeek: 1 }, {}]
    expect(broken(mostWeeksBetween, plainAhead({ weeks: [1, 2, 3], themes }), '0 1 1')).toEqual([])
    const kept = plainAhead({
      weeks: [1, 2, 3, 4],
      themes: [{ mostWeeksBetween: 2 }, {}],
      problem: { blocks: [{ theme: 1, firstWeek: 2, lastWeek: 3 }] },
    })
    expect(broken(mostWeeksBetween, kept, '0 1 1 0')).toEqual([])
  })

  it('block: only the theme and those under it', () => {
    const problem = plainAhead({
      weeks: [1, 2, 3],
      themes: [{}, { parent: 0 }, {}],
      problem: { blocks: [{ theme: 0, firstWeek: 2, lastWeek: 2 }] },
    })
    expect(broken(block, problem, '2 0 2')).toEqual([])
    expect(broken(block, problem, '2 1 2')).toEqual([])
    expect(broken(block, problem, '0 2 0')).toEqual([1])
  })

  it('design rest: not again in so many practices, of the record too', () => {
    const problem = plainAhead({ weeks: [1, 1, 2, 3], themes: [{}, {}, {}], problem: { designRest: 2 } })
    expect(broken(designRest, problem, '0 0 1 2')).toEqual([1])
    expect(broken(designRest, problem, '0 1 0 2')).toEqual([2])
    expect(broken(designRest, problem, '0 1 2 0')).toEqual([])
    expect(broken(designRest, { ...problem, met: [week(0, [], 0), week(0, [], 1)] }, '0 1 2 0')).toEqual([
      0, 1,
    ])
    expect(broken(designRest, { ...problem, met: [week(0, [], 0), week(0, [], 1)] }, '2 0 1 2')).toEqual([])
  })

  it('design rest: a design that is held may come, and the others keep their distance from it', () => {
    const bare = plainAhead({ weeks: [1, 1, 2, 3], themes: [{}, {}, {}], problem: { designRest: 2 } })
    const practices = bare.practices.map((own, at) =>
      at === 2 ? { ...own, held: { theme: 0, design: 0 } } : own,
    )
    const problem = { ...bare, practices, met: [week(0, [], 0), week(0, [], 1)] }
    expect(broken(designRest, problem, '2 1 0 1')).toEqual([1, 3])
    expect(broken(designRest, problem, '0 2 0 0')).toEqual([0, 3])
    expect(broken(designRest, { ...problem, met: [week(0, [], 0)] }, '1 2 0 1')).toEqual([])
  })
})
