import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { daysLater } from '#common/days-later'
import {
  daysOutOfOrder,
  nameTaken,
  noTerm,
  overOtherSeason,
  type SeasonDraft,
  seasonFaults,
  termFaults,
  termNamesTwice,
  termsOverlapping,
  tooLong,
} from '#squad/season-faults'

const autumn = { row: 0, name: 'Autumn', firstDay: '2026-08-01', lastDay: '2026-12-31' }
const spring = { row: 1, name: 'Spring', firstDay: '2027-01-01', lastDay: '2027-06-30' }
const season: SeasonDraft = {
  name: '2026/27',
  firstDay: '2026-08-01',
  lastDay: '2027-06-30',
  terms: [autumn, spring],
}
const before = { name: '2025/26', firstDay: '2025-08-01', lastDay: '2026-07-31' }
const pathsOf = (problems: readonly { readonly path: string }[]) => problems.map(({ path }) => path)

describe('a season', () => {
  it('with terms side by side, after another season, has nothing wrong', () => {
    expect(seasonFaults(season, { others: [before], held: null })).toEqual([])
  })

  it('has a name of its own, in whatever case', () => {
    expect(pathsOf(nameTaken({ ...season, name: 'LATE' }, [{ ...before, name: 'Late' }]))).toEqual(['name'])
  })

  it('ends on its first day at the earliest, and within a year and a half', () => {
    expect(pathsOf(daysOutOfOrder({ firstDay: '2026-08-02', lastDay: '2026-08-01' }))).toEqual(['lastDay'])
    expect(daysOutOfOrder({ firstDay: '2026-08-01', lastDay: '2026-08-01' })).toEqual([])
    expect(pathsOf(tooLong({ firstDay: '2026-08-01', lastDay: '2036-06-30' }))).toEqual(['lastDay'])
    expect(tooLong(season)).toEqual([])
  })

  it('shares no day with another; the problem stands at the end that meets it', () => {
    const known = { others: [before], held: null }
    expect(pathsOf(overOtherSeason({ ...season, firstDay: '2026-07-31' }, known))).toEqual(['firstDay'])
    expect(pathsOf(overOtherSeason({ firstDay: '2025-01-01', lastDay: '2025-08-01' }, known))).toEqual([
      'lastDay',
    ])
  })

  it('is not moved past another, in either direction', () => {
    const early = { firstDay: '2024-08-01', lastDay: '2025-06-30' }
    expect(pathsOf(overOtherSeason(season, { others: [before], held: early }))).toEqual(['firstDay'])
    expect(pathsOf(overOtherSeason(early, { others: [before], held: season }))).toEqual(['firstDay'])
    expect(overOtherSeason(season, { others: [before], held: season })).toEqual([])
  })
})

describe('terms', () => {
  it('are one at least, with names that differ', () => {
    expect(pathsOf(noTerm({ ...season, terms: [] }))).toEqual(['terms.0.name'])
    const twice = { ...season, terms: [autumn, { ...spring, row: 4, name: 'autumn' }] }
    expect(pathsOf(termNamesTwice(twice))).toEqual(['terms.4.name'])
  })

  it('lie inside the season with their days in order; each end says so by itself', () => {
    expect(pathsOf(termFaults(season, { row: 2, firstDay: '2026-07-31', lastDay: '2027-07-01' }))).toEqual([
      'terms.2.firstDay',
      'terms.2.lastDay',
    ])
    expect(pathsOf(termFaults(season, { row: 0, firstDay: '2026-10-02', lastDay: '2026-10-01' }))).toEqual([
      'terms.0.lastDay',
    ])
  })

  it('do not share a day: the later one is told', () => {
    const terms = [{ ...spring, firstDay: '2026-12-31' }, autumn]
    expect(pathsOf(termsOverlapping({ ...season, terms }))).toEqual(['terms.1.firstDay'])
  })

  it('are told to overlap exactly when some day lies in two of them', () => {
    const term = fc.record({ from: fc.nat(40), length: fc.nat(12) })
    fc.assert(
      fc.property(fc.array(term, { maxLength: 5 }), (drawn) => {
        const terms = drawn.map(({ from, length }, row) => ({
          row,
          name: `${row}`,
          firstDay: daysLater('2026-08-01', from),
          lastDay: daysLater('2026-08-01', from + length),
        }))
        // Day by day, the slow way.
        const isDouble = Array.from({ length: 60 }, (_, day) => daysLater('2026-08-01', day)).some(
          (day) => terms.filter(({ firstDay, lastDay }) => firstDay <= day && day <= lastDay).length > 1,
        )
        expect(termsOverlapping({ ...season, terms }).length > 0).toBe(isDouble)
      }),
    )
  })
})
