import { describe, expect, it } from 'vitest'
import { fairKeepShare, fairSeatShare, withOneMore, withOpenGoal } from '#fairness/fair-share'

describe('a fair share worked by hand', () => {
  // Ten present, two keeper seats, four who may keep; six seats in play, two rest.
  const places = { present: 10, keeperSeats: 2, able: 4 }

  it('of keeping: 2 seats ÷ 4 able = 1/2, and nothing for the others', () => {
    expect(fairKeepShare(places, true)).toBe(0.5)
    expect(fairKeepShare(places, false)).toBe(0)
  })

  it('of the other columns: seats ÷ the 8 out of goal, of the half or the whole that is left', () => {
    expect(fairSeatShare(places, { seats: 3, isAble: true })).toBeCloseTo(0.5 * (3 / 8), 12)
    expect(fairSeatShare(places, { seats: 3, isAble: false })).toBeCloseTo(3 / 8, 12)
    // 4 × 3/16 + 6 × 3/8 = 3: the column's seats.
    expect(4 * 0.5 * (3 / 8) + 6 * (3 / 8)).toBe(3)
  })

  it('of a lone willing keeper: all of goal and nothing else', () => {
    const lone = { present: 8, keeperSeats: 1, able: 1 }
    expect(fairKeepShare(lone, true)).toBe(1)
    expect(fairSeatShare(lone, { seats: 7, isAble: true })).toBe(0)
    expect(fairSeatShare(lone, { seats: 7, isAble: false })).toBe(1)
  })

  it('without a keeper seat: seats ÷ present for everyone', () => {
    const open = { present: 5, keeperSeats: 0, able: 0 }
    expect(fairKeepShare(open, true)).toBe(0)
    expect(fairSeatShare(open, { seats: 2, isAble: true })).toBe(2 / 5)
  })

  it('with everyone in goal: all of goal, and no other column', () => {
    const all = { present: 2, keeperSeats: 2, able: 2 }
    expect(fairKeepShare(all, true)).toBe(1)
    expect(fairSeatShare(all, { seats: 0, isAble: true })).toBe(0)
  })

  it('with one more there: 2/5 of keeping for one who may, 3/9 of three seats for one who may not', () => {
    expect(fairKeepShare(withOneMore(places, true), true)).toBe(2 / 5)
    expect(fairSeatShare(withOneMore(places, true), { seats: 3, isAble: true })).toBeCloseTo(
      (3 / 5) * (3 / 9),
      12,
    )
    expect(fairSeatShare(withOneMore(places, false), { seats: 3, isAble: false })).toBeCloseTo(3 / 9, 12)
  })

  it('with the goal open to all: seats ÷ present of every column', () => {
    expect(fairKeepShare(withOpenGoal(places), true)).toBe(2 / 10)
    expect(fairSeatShare(withOpenGoal(places), { seats: 3, isAble: true })).toBeCloseTo(3 / 10, 12)
  })

  it('cannot be made with more keeper seats than players who may keep', () => {
    expect(() => fairKeepShare({ present: 5, keeperSeats: 2, able: 1 }, true)).toThrow('More keeper seats')
    expect(() => fairKeepShare({ present: 1, keeperSeats: 0, able: 2 }, true)).toThrow('More keeper seats')
  })
})
