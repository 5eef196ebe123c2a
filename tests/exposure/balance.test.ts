import { describe, expect, it } from 'vitest'
import { InvariantError } from '#common/result'
import { checkBooks } from '#exposure/balance'
import { exposuresOf } from '#exposure/exposures'
import { practiceSpans } from '#exposure/practice-spans'
import type { Practice } from '#practice/practice'

const rules = { middleAttackShare: 0.5 }
const here = (playerId: string, from = 0, to = 100) => ({ playerId, from, to })
const oneTurn = (stations: Practice['turns'][number]['stations'], register = [here('a'), here('b')]) =>
  practiceSpans({ register, turns: [{ start: 0, end: 40, themeId: null, stations }] })

describe('the books of a session', () => {
  it('balance when everyone sits once and is there', () => {
    const spans = oneTurn([{ attack: ['a'], defend: [], keep: [] }])
    expect(() => checkBooks(spans, exposuresOf(spans, rules), rules)).not.toThrow()
  })

  it('do not balance when a player sits twice', () => {
    const spans = oneTurn([{ attack: ['a'], defend: ['a'], keep: [] }])
    expect(() => checkBooks(spans, exposuresOf(spans, rules), rules)).toThrow(InvariantError)
    expect(() => checkBooks(spans, exposuresOf(spans, rules), rules)).toThrow(
      '"liveSeconds":40,"bookedSeconds":80',
    )
  })

  it('do not balance when a player sits who is not there', () => {
    const spans = oneTurn([{ attack: ['c'], defend: [], keep: [] }])
    expect(() => checkBooks(spans, exposuresOf(spans, rules), rules)).toThrow('"playerId":"c"')
  })

  it('do not balance when a role has got other than its seats', () => {
    const spans = oneTurn([{ attack: ['a'], defend: [], keep: ['b'] }])
    const swapped = exposuresOf(spans, rules).map((row) =>
      row.column.role === 'keep' ? { ...row, column: { ...row.column, role: 'attack' as const } } : row,
    )
    expect(() => checkBooks(spans, swapped, rules)).toThrow('The book of a role does not balance.')
  })
})
