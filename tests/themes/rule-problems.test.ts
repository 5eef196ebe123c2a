import { describe, expect, it } from 'vitest'
import { blocksInTerm, rulesInTerm } from '#themes/fit-to-term'
import { noRule, type ProgrammeRule } from '#themes/programme-rule'
import { problemsOfBlocks, problemsOfRules } from '#themes/rule-problems'

const known = { weeks: 13, nameOf: (id: string) => id.toUpperCase() }
const rule = (themeId: string, more: Partial<ProgrammeRule> = {}): ProgrammeRule => ({
  ...noRule,
  themeId,
  wishedShare: 0.2,
  ...more,
})
const said = (...rules: readonly ProgrammeRule[]) =>
  problemsOfRules(rules, known).map(({ path, message }) => `${path} ${message}`)

describe('rules of a programme', () => {
  it('may bind nothing, and the whole of the term', () => {
    const whole = { firstWeek: 1, lastWeek: 13, leastWeeksBetween: 2, mostWeeksBetween: 2 }
    expect(said(rule('a'), rule('b', { ...whole, afterThemeId: 'a' }))).toEqual([])
  })

  it('stay in the weeks of the term, in their order', () => {
    expect(said(rule('a', { firstWeek: 14 }))).toEqual(['first-a is week 14; this term has weeks 1 to 13'])
    expect(said(rule('a', { firstWeek: 5, lastWeek: 4 }))).toEqual([
      'last-a is week 4, before the first one, 5; write 5 or a later one',
    ])
    expect(said(rule('a', { leastWeeksBetween: 3, mostWeeksBetween: 2 }))).toEqual([
      'most-a is fewer than 3, the weeks it stays away at least; write 3 or more',
    ])
  })

  it('never wait for each other, however long the ring is', () => {
    expect(said(rule('a', { afterThemeId: 'a' }))).toEqual([
      'after-a is the theme itself; choose another one, or none',
    ])
    const ring = [
      rule('a', { afterThemeId: 'b' }),
      rule('b', { afterThemeId: 'c' }),
      rule('c', { afterThemeId: 'a' }),
    ]
    expect(said(...ring)).toHaveLength(3)
    expect(said(...ring)[0]).toBe(
      'after-a B waits for A in turn, so neither could ever begin; take one of the two away',
    )
    // One that waits for a ring without being part of it is not to blame.
    expect(said(...ring, rule('d', { afterThemeId: 'a' }))).toHaveLength(3)
  })
})

describe('weeks kept for one theme', () => {
  it('meet no weeks kept for another one', () => {
    const blocks = [
      { themeId: 'a', firstWeek: 2, lastWeek: 4 },
      { themeId: 'b', firstWeek: 4, lastWeek: 5 },
      { themeId: 'a', firstWeek: 4, lastWeek: 4 },
    ]
    expect(problemsOfBlocks(blocks, known).map(({ path }) => path)).toEqual(['blockFirst-1', 'blockFirst-2'])
    expect(problemsOfBlocks([blocks[0], { ...blocks[1], firstWeek: 5 }] as typeof blocks, known)).toEqual([])
    expect(problemsOfBlocks([{ themeId: 'a', firstWeek: 3, lastWeek: 14 }], known)).toEqual([
      { path: 'blockLast-0', message: 'is week 14; this term has weeks 1 to 13' },
    ])
  })
})

it('a programme fits a shorter term: weeks it does not have bind nothing', () => {
  const [early, late] = rulesInTerm(
    [rule('a', { firstWeek: 3, lastWeek: 9 }), rule('b', { firstWeek: 8 })],
    8,
  )
  expect(early).toMatchObject({ firstWeek: 3, lastWeek: null })
  expect(late).toMatchObject({ firstWeek: 8 })
  const blocks = [
    { themeId: 'a', firstWeek: 7, lastWeek: 12 },
    { themeId: 'b', firstWeek: 9, lastWeek: 9 },
  ]
  expect(blocksInTerm(blocks, 8)).toEqual([{ themeId: 'a', firstWeek: 7, lastWeek: 8 }])
})
