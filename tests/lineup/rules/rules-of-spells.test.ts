import { describe, expect, it } from 'vitest'
import type { RunningSpell } from '#lineup/problem'
import { leastSpellRule } from '#lineup/rules/least-spell-rule'
import { longestOffRule } from '#lineup/rules/longest-off-rule'
import { longestSpellRule } from '#lineup/rules/longest-spell-rule'
import { mayReturnRule } from '#lineup/rules/may-return-rule'
import { planOf, smallLineUp } from '../../support/line-up-builder'

/** Four windows of five minutes in one period. */
const onePeriod = { periods: 1, windows: 4 } as const

function since(line: RunningSpell['line'], seconds: number, more: Partial<RunningSpell> = {}) {
  return { running: { line, seconds, hasComeOff: false, periodsKept: 0, ...more } }
}

describe('the least time on', () => {
  const rules = { leastSpellSeconds: 600 }

  it('holds inside a period, for who comes on and who begins it', () => {
    const problem = smallLineUp({ ...onePeriod, rules })
    const plan = planOf('KKKK', 'B--B', 'M-M-', '-BBM')
    expect(leastSpellRule(problem, plan)).toEqual([
      { rule: 'leastSpell', window: 0, players: [1] },
      { rule: 'leastSpell', window: 0, players: [2] },
      { rule: 'leastSpell', window: 2, players: [2] },
    ])
  })

  it('is not broken by the end of the period, nor by who has to leave', () => {
    const problem = smallLineUp({ rules, players: [{}, {}, { isThere: [true, false, true, true] }] })
    expect(leastSpellRule(problem, planOf('KK KK', '-B BB', 'M- --', 'BM MM'))).toEqual([])
  })

  it('counts the time before, where a period is running', () => {
    const players = [since('keeper', 300), since('back', 299), since('middle', 600), since(null, 600)]
    const problem = smallLineUp({ ...onePeriod, rules, players, hasStart: false })
    expect(leastSpellRule(problem, planOf('KKKK', '-BBB', 'M---', 'BMMM'))).toEqual([
      { rule: 'leastSpell', window: 0, players: [1] },
    ])
  })
})

describe('the longest time on', () => {
  it('holds out of goal, inside a period', () => {
    const problem = smallLineUp({ ...onePeriod, rules: { longestSpellSeconds: 600 } })
    expect(longestSpellRule(problem, planOf('KKKK', 'BBB-', 'MM-M', '--MB'))).toEqual([
      { rule: 'longestSpell', window: 0, players: [1] },
    ])
    const halves = smallLineUp({ rules: { longestSpellSeconds: 600 } })
    expect(longestSpellRule(halves, planOf('KK KK', 'BB BB', 'MM --', '-- MM'))).toEqual([])
  })

  it('begins anew for who comes out of goal, and counts the time before', () => {
    const players = [since('keeper', 900), since('back', 301)]
    const problem = smallLineUp({
      ...onePeriod,
      players,
      hasStart: false,
      rules: { longestSpellSeconds: 600 },
    })
    expect(longestSpellRule(problem, planOf('BB-K', 'M-K-', 'KM--', '-KBB'))).toEqual([
      { rule: 'longestSpell', window: 0, players: [1] },
    ])
  })
})

describe('the longest time off', () => {
  it('holds inside a period, for who is there', () => {
    const rules = { longestOffSeconds: 300 }
    const plan = planOf('KK KK', 'BB BB', 'MM --', '-- MM')
    expect(
      longestOffRule(smallLineUp({ rules }), plan).map(({ window, players }) => [window, ...players]),
    ).toEqual([
      [2, 2],
      [0, 3],
    ])
    const late = smallLineUp({ rules, players: [{}, {}, {}, { isThere: [false, true, true, true] }] })
    expect(longestOffRule(late, plan).map(({ window, players }) => [window, ...players])).toEqual([[2, 2]])
  })

  it('counts the time before, where a period is running', () => {
    const players = [since('keeper', 60), since('back', 60), since('middle', 60), since(null, 60)]
    const problem = smallLineUp({ players, hasStart: false, rules: { longestOffSeconds: 300 } })
    expect(longestOffRule(problem, planOf('KK KK', 'BB B-', 'M- -B', '-M MM'))).toEqual([
      { rule: 'longestOff', window: 0, players: [3] },
    ])
  })
})

describe('where nobody may come back', () => {
  it('who came off stays off, after a break too', () => {
    const plan = planOf('KK KK', 'BB -B', 'M- M-', '-M BM')
    expect(mayReturnRule(smallLineUp({ rules: { mayReturn: false } }), plan)).toEqual([
      { rule: 'mayReturn', window: 3, players: [1] },
      { rule: 'mayReturn', window: 2, players: [2] },
    ])
    expect(mayReturnRule(smallLineUp(), plan)).toEqual([])
  })

  it('who came off earlier stays off', () => {
    const players = [since('keeper', 60), since(null, 60, { hasComeOff: true })]
    const problem = smallLineUp({ players, hasStart: false, rules: { mayReturn: false } })
    expect(mayReturnRule(problem, planOf('KK KK', '-- -B', 'MM MM', 'BB B-'))).toEqual([
      { rule: 'mayReturn', window: 3, players: [1] },
    ])
  })
})
