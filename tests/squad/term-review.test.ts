import { describe, expect, it } from 'vitest'
import { isMemberBetween } from '#squad/member-between'
import { termNow } from '#squad/term-now'
import { finalOn, isFinal } from '#squad/term-review'

describe('a review', () => {
  it('can be answered for seven days, the day of opening included', () => {
    const review = { openedOn: '2026-12-28' }
    expect(finalOn(review)).toBe('2027-01-04')
    expect(isFinal(review, '2027-01-03')).toBe(false)
    expect(isFinal(review, '2027-01-04')).toBe(true)
  })
})

describe('the term now', () => {
  const term = (id: string, firstDay: string, lastDay: string) => ({ id, name: id, firstDay, lastDay })
  const terms = [term('autumn', '2025-09-01', '2025-12-19'), term('spring', '2026-01-05', '2026-06-30')]

  it.each([
    ['2025-08-01', 'autumn'],
    ['2025-12-25', 'autumn'],
    ['2026-01-05', 'spring'],
    ['2026-08-01', 'spring'],
  ])('on %s is %s', (day, id) => {
    expect(termNow(terms, day)?.id).toBe(id)
  })

  it('is none without terms', () => {
    expect(termNow([], '2026-01-01')).toBeNull()
  })
})

describe('a member of some days', () => {
  const memberships = [{ playerId: 'ana', firstDay: '2026-01-05', lastDay: '2026-02-01' }]
  const at = (firstDay: string, lastDay: string) =>
    isMemberBetween(memberships, { playerId: 'ana', firstDay, lastDay })

  it('is one when any of the days is its own', () => {
    expect(at('2025-09-01', '2026-01-05')).toBe(true)
    expect(at('2026-02-01', '2026-06-30')).toBe(true)
    expect(at('2025-09-01', '2026-01-04')).toBe(false)
    expect(at('2026-02-02', '2026-06-30')).toBe(false)
  })
})
